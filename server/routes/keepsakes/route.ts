import { createRoute, z } from "@hono/zod-openapi";
import { clipSentSchema, keepingSchema, keepsakeResultSchema, photoSentSchema } from "../../../core/shapes/keepsake.ts";
import { siteKeySchema } from "../../../core/shapes/served.ts";
import { may, type Who } from "../../access.ts";
import { Refusal } from "../../errors.ts";
import { lookAtPicture, lookAtSound } from "../../keepsakes/content.ts";
import { setKeeping } from "../../keepsakes/keeping.ts";
import { type Given, json, notFound, refusals, router, unclear, writeRefusals } from "../kit.ts";
import { siteOf } from "../sites/store.ts";
import { serveBytes } from "./serve-bytes.ts";
import { keepClip, keepPhoto, keepsakeOf } from "./store.ts";

const params = z.object({ id: z.uuid() });
const bytes = z.string().openapi({ format: "binary" });
const kinds = (...types: string[]) => Object.fromEntries(types.map((type) => [type, { schema: bytes }]));
const SOUNDS = kinds("audio/webm", "audio/ogg", "audio/wav");
const PICTURES = kinds("image/jpeg", "image/png", "image/webp");

const kept = {
  200: json(keepsakeResultSchema, "stored or known: on disk; not_kept: will not be, and need not be sent again"),
  ...notFound,
  ...unclear,
  ...refusals,
  ...writeRefusals,
};
const putClip = createRoute({
  ...may("say"),
  method: "put",
  path: "/api/clips/{id}",
  summary: "Send the sound of a phrase, after the phrase; may be sent again safely",
  description: "At most 2 MB. What it is is found by its bytes. A repeat with other sound is refused.",
  request: { params, query: clipSentSchema, body: { required: true, content: SOUNDS } },
  responses: kept,
});
const putPhoto = createRoute({
  ...may("say"),
  method: "put",
  path: "/api/photos/{id}",
  summary: "Send a photograph of a job or of one of its phrases, after both; may be sent again safely",
  description: "At most 4 MB. Place, camera, times and all else that is not the picture is removed before it is kept.",
  request: { params, query: photoSentSchema, body: { required: true, content: PICTURES } },
  responses: kept,
});
const getClip = createRoute({
  ...may("read"),
  method: "get",
  path: "/api/clips/{id}",
  summary: "The sound of a phrase, for as long as its site keeps it",
  request: { params },
  responses: { 200: { description: "the sound", content: SOUNDS }, ...notFound, ...refusals },
});
const getPhoto = createRoute({
  ...may("read"),
  method: "get",
  path: "/api/photos/{id}",
  summary: "A photograph",
  request: { params },
  responses: { 200: { description: "the picture", content: PICTURES }, ...notFound, ...refusals },
});
const putKeeping = createRoute({
  ...may("set_up"),
  method: "put",
  path: "/api/sites/{site}/keeping",
  summary: "Say whether the sound of phrases is kept at a site, and for how long",
  description: "Sound already kept under an earlier choice grows old by `days`, unless it is now kept for good.",
  request: {
    params: z.object({ site: siteKeySchema }),
    body: { required: true, content: { "application/json": { schema: keepingSchema } } },
  },
  responses: { 200: json(keepingSchema, "as it stands now"), ...notFound, ...refusals, ...writeRefusals },
});

const ENDS: Record<string, string> = {
  "audio/webm": "webm",
  "audio/ogg": "ogg",
  "audio/wav": "wav",
  "image/jpeg": "jpg",
  "image/png": "png",
  "image/webp": "webp",
};

/** Sound of phrases and photographs, in and out; and what a site keeps of the first. */
export function keepsakeRoutes(given: Given) {
  const routes = router();
  const { store, kept, metrics } = given;
  routes.openapi(putClip, async (c) => {
    const looked = lookAtSound(new Uint8Array(await c.req.arrayBuffer()));
    if (!looked.ok) throw new Refusal(415, looked.problem);
    const result = await keepClip(given, c.req.valid("param").id, c.req.valid("query"), looked.value, c.get("who"));
    metrics.count("handsfull_keepsakes", { kind: "clip", became: result.status });
    return c.json(result, 200);
  });
  routes.openapi(putPhoto, async (c) => {
    const looked = lookAtPicture(new Uint8Array(await c.req.arrayBuffer()));
    if (!looked.ok) throw new Refusal(415, looked.problem);
    const result = await keepPhoto(given, c.req.valid("param").id, c.req.valid("query"), looked.value, c.get("who"));
    metrics.count("handsfull_keepsakes", { kind: "photo", became: result.status });
    return c.json(result, 200);
  });

  /** The bytes behind a row, or why there are none. */
  async function bytesOf(kind: "clip" | "photo", id: string, { sees }: Who) {
    const row = await keepsakeOf(store, kind, id, sees);
    const name = kind === "clip" ? "sound" : "photograph";
    if (!row) throw new Refusal(404, `No ${name} ${id} is stored here. GET /api/jobs/{id} lists what a job has.`);
    if (row.removedAt) throw new Refusal(404, `The ${name} was removed, as its site keeps it no longer than it said.`);
    const bytes = await kept.read(row.sha256);
    if (!bytes) throw new Error(`the file of ${kind} ${id} is missing from the folder of kept files`);
    return { bytes, type: row.type, sha256: row.sha256, name: `${kind}-${id}.${ENDS[row.type] ?? "bin"}` };
  }
  routes.openapi(getClip, async (c) => {
    const { bytes, ...about } = await bytesOf("clip", c.req.valid("param").id, c.get("who"));
    return serveBytes(c, bytes, about) as never;
  });
  routes.openapi(getPhoto, async (c) => {
    const { bytes, ...about } = await bytesOf("photo", c.req.valid("param").id, c.get("who"));
    return serveBytes(c, bytes, about) as never;
  });

  routes.openapi(putKeeping, async (c) => {
    const { site } = c.req.valid("param");
    if (!(await siteOf(store, site)))
      throw new Refusal(404, `No site ${site} is set up: PUT /api/sites/${site} first.`);
    await setKeeping(store, site, c.req.valid("json"), c.get("who"));
    return c.json(c.req.valid("json"), 200);
  });
  return routes;
}
