import { createRoute, z } from "@hono/zod-openapi";
import { siteKeySchema } from "../../../core/shapes/served.ts";
import {
  siteWordSchema,
  siteWordsSchema,
  wordResultSchema,
  wordsSentSchema,
  wordTriedSchema,
  wordTrySchema,
} from "../../../core/shapes/taught-word.ts";
import { may } from "../../access.ts";
import { RIGHT_WORDS } from "../../accounts/roles.ts";
import { EVERY_SITE, mustSee } from "../../accounts/sites-seen.ts";
import { Refusal } from "../../errors.ts";
import { tryWord } from "../../reading/try-word.ts";
import { type Given, json, refusals, router, writeRefusals } from "../kit.ts";
import { keepWords, wordsOf } from "./store.ts";

const params = z.object({ site: siteKeySchema });
const body = { required: true, content: { "application/json": { schema: wordsSentSchema } } };
const listed = { 200: json(siteWordsSchema, "oldest first, the withdrawn ones too"), ...refusals };
const kept = {
  200: json(
    siteWordsSchema.extend({ results: z.array(wordResultSchema) }),
    "one result a word sent, in the order sent; and the words as they stand now",
  ),
  ...refusals,
  ...writeRefusals,
};
const description =
  "Each of `words` is a `SiteWord`, at most 200. Those not sent stay; sent with `withdrawn` a word is read no more. " +
  "`refused` says why in `problem`. The jobs in which they were said and the latest are read again at once, signed ones stay as they were signed, any other is read with its next phrase.";

const list = createRoute({
  ...may("read"),
  method: "get",
  path: "/api/sites/{site}/words",
  summary: "The words taught at a site",
  request: { params },
  responses: listed,
});
const put = createRoute({
  ...may("teach"),
  method: "put",
  path: "/api/sites/{site}/words",
  summary: "Teach words at a site, or withdraw them; may be sent again safely",
  description,
  request: { params, body },
  responses: kept,
});
const listEverywhere = createRoute({
  ...may("read"),
  method: "get",
  path: "/api/words",
  summary: "The words taught for every site",
  responses: listed,
});
const putEverywhere = createRoute({
  ...may("every_site"),
  method: "put",
  path: "/api/words",
  summary: "Teach words for every site, or withdraw them; may be sent again safely",
  description,
  request: { body },
  responses: kept,
});

const tryOut = createRoute({
  ...may("teach"),
  method: "post",
  path: "/api/words/trial",
  summary: "Which earlier phrases would read otherwise with a word, or without it; nothing is kept",
  request: { body: { required: true, content: { "application/json": { schema: wordTrySchema } } } },
  responses: { 200: json(wordTriedSchema, "the latest of them, and how many in all"), ...refusals },
});

export function wordRoutes({ store }: Given) {
  const routes = router();
  routes.openAPIRegistry.register("SiteWord", siteWordSchema);
  routes.openapi(list, async (c) => c.json({ words: await wordsOf(store.db, c.req.valid("param").site) }, 200));
  routes.openapi(put, async (c) =>
    c.json(await keepWords(store, c.req.valid("param").site, c.req.valid("json").words, c.get("who")), 200),
  );
  routes.openapi(listEverywhere, async (c) => c.json({ words: await wordsOf(store.db, "") }, 200));
  routes.openapi(putEverywhere, async (c) =>
    c.json(await keepWords(store, "", c.req.valid("json").words, c.get("who")), 200),
  );
  routes.openapi(tryOut, async (c) => {
    const { site = "", say, as, withdraw = false } = c.req.valid("json");
    const { sees } = c.get("who");
    if (site) mustSee(sees, site);
    else if (sees !== EVERY_SITE) throw new Refusal(403, `${RIGHT_WORDS.every_site} Name one of yours.`);
    return c.json(await tryWord(store, { site, say, as, withdraw }), 200);
  });
  return routes;
}
