import { OpenAPIHono } from "@hono/zod-openapi";
import type { MiddlewareHandler } from "hono";
import { requestId } from "hono/request-id";
import { secureHeaders } from "hono/secure-headers";
import { access } from "./access.ts";
import { makeBackPressure } from "./back-pressure.ts";
import { answerFailure, Refusal } from "./errors.ts";
import { bodies, isBytesPath } from "./limits.ts";
import { requestsSeen } from "./requests-seen.ts";
import { calendarRoutes } from "./routes/calendar/route.ts";
import { carryRoutes } from "./routes/carry/route.ts";
import { correctionRoutes } from "./routes/corrections/route.ts";
import { dueRoutes } from "./routes/due/route.ts";
import { entryRoutes } from "./routes/entries/route.ts";
import { familyRoutes } from "./routes/families/route.ts";
import { followUpRoutes } from "./routes/follow-ups/route.ts";
import { healthRoutes } from "./routes/health/route.ts";
import { jobRoutes } from "./routes/jobs/route.ts";
import { keepsakeRoutes } from "./routes/keepsakes/route.ts";
import { BYTES_POLICY } from "./routes/keepsakes/serve-bytes.ts";
import type { Env, Given } from "./routes/kit.ts";
import { peopleRoutes } from "./routes/people/route.ts";
import { phraseRoutes } from "./routes/phrases/route.ts";
import { questionRoutes } from "./routes/questions/route.ts";
import { reliabilityRoutes } from "./routes/reliability/route.ts";
import { reportRoutes } from "./routes/report/route.ts";
import { reviewRoutes } from "./routes/review/route.ts";
import { searchRoutes } from "./routes/search/route.ts";
import { sendingRoutes } from "./routes/sending/route.ts";
import { signInRoutes } from "./routes/sign-in/route.ts";
import { siteRoutes } from "./routes/sites/route.ts";
import { staticRoutes } from "./routes/static/route.ts";
import { stockRoutes } from "./routes/stock/route.ts";
import { valveImportRoutes } from "./routes/valve-import/route.ts";
import { valveRoutes } from "./routes/valves/route.ts";
import { wordRoutes } from "./routes/words/route.ts";

/** The whole server but for the listening: what is given in, every route out. */
export function makeApp(given: Given, web?: string) {
  const app = new OpenAPIHono<Env>();
  app.onError((cause, c) => answerFailure(cause, c, given.log));
  app.use(requestId({ limitLength: 100 }));
  app.use(requestsSeen(given.log, given.metrics));
  app.use(policyOfBytes());
  app.use("/api/*", notKept());
  app.use(headers());
  app.use(bodies());
  const pressure = makeBackPressure(given.metrics);
  const known = access(given.store, given.door, pressure);
  app.use("/api/*", known);
  app.use("/report", known);

  app.route("/", healthRoutes(given, pressure));
  app.route("/", signInRoutes(given));
  app.route("/", peopleRoutes(given));
  app.route("/", phraseRoutes(given));
  app.route("/", correctionRoutes(given));
  app.route("/", jobRoutes(given));
  app.route("/", reviewRoutes(given));
  app.route("/", questionRoutes(given));
  app.route("/", valveRoutes(given));
  app.route("/", valveImportRoutes(given));
  app.route("/", searchRoutes(given));
  app.route("/", familyRoutes(given));
  app.route("/", followUpRoutes(given));
  app.route("/", dueRoutes(given));
  app.route("/", carryRoutes(given));
  app.route("/", reliabilityRoutes(given));
  app.route("/", siteRoutes(given));
  app.route("/", stockRoutes(given));
  app.route("/", wordRoutes(given));
  app.route("/", keepsakeRoutes(given));
  app.route("/", reportRoutes(given));
  app.route("/", sendingRoutes(given));
  app.route("/", entryRoutes(given));
  app.route("/", calendarRoutes(given));
  app.doc31("/api/openapi.json", {
    openapi: "3.1.0",
    info: {
      title: "Handsfull",
      version: "1",
      description: "A talking log for valve technicians. Times are ISO 8601 with offset; errors are RFC 9457 problems.",
    },
  });
  refuseOtherMethods(app);
  app.route("/", staticRoutes(web));
  app.notFound((c) => {
    const detail = `Nothing is served at ${c.req.method} ${c.req.path.slice(0, 200)}. GET /api/openapi.json lists what is.`;
    return answerFailure(new Refusal(404, detail), c, given.log);
  });
  return app;
}

/** A path that is served, asked in a way that is not, is answered with the ways that are. */
function refuseOtherMethods(app: OpenAPIHono<Env>): void {
  const methods = new Map<string, Set<string>>();
  for (const { path, method } of app.routes) {
    if (method === "ALL" || path.includes("*")) continue;
    methods.set(path, (methods.get(path) ?? new Set()).add(method));
  }
  for (const [path, known] of methods) {
    const allow = [...known, ...(known.has("GET") ? ["HEAD"] : [])].sort().join(", ");
    app.all(path, (c) => {
      const detail = `${c.req.method} is not done at ${c.req.path.slice(0, 200)}: use ${allow}.`;
      throw new Refusal(405, detail, { headers: { allow } });
    });
  }
}

/** What people sent as bytes is boxed in further than a page: around `headers`, which sets the page's own last. */
function policyOfBytes(): MiddlewareHandler {
  return async (c, next) => {
    await next();
    if (isBytesPath(c.req.path)) c.res.headers.set("content-security-policy", BYTES_POLICY);
  };
}

/** What a call answers is for whoever made it: no cache on the way or in the browser keeps it, where its route does not say how. */
function notKept(): MiddlewareHandler {
  return async (c, next) => {
    await next();
    if (!c.res.headers.has("cache-control")) c.res.headers.set("cache-control", "no-store");
  };
}

/** No inline script anywhere, no other host, no frame: what the pages need and nothing more. */
function headers() {
  return secureHeaders({
    contentSecurityPolicy: {
      defaultSrc: ["'self'"],
      scriptSrc: ["'self'", "'wasm-unsafe-eval'"],
      styleSrc: ["'self'"],
      imgSrc: ["'self'", "data:", "blob:"],
      mediaSrc: ["'self'", "blob:"],
      connectSrc: ["'self'"],
      workerSrc: ["'self'"],
      objectSrc: ["'none'"],
      baseUri: ["'none'"],
      formAction: ["'self'"],
      frameAncestors: ["'none'"],
    },
    xFrameOptions: "DENY",
    referrerPolicy: "no-referrer",
    permissionsPolicy: { microphone: ["self"], camera: ["self"], geolocation: [] },
    // meaningful over TLS only, and then it is for whoever terminates TLS to decide for the whole host
    strictTransportSecurity: false,
    xXssProtection: false,
  });
}

export type App = ReturnType<typeof makeApp>;
