import { type Kit, lite } from "./kit.lite.ts";
import { jobs, phrases, type recordTables } from "./tables.ts";

type Recorded = Pick<ReturnType<typeof recordTables>, "jobs" | "phrases">;

/**
 * What a lead makes of what was said. Decisions, answers, signatures and owners are only ever added, by their
 * number within their phrase, job or follow-up; `review_items` is derived from readings and decisions and may be made again at any time.
 */
export function reviewTables({ table, text, integer, index, primaryKey }: Kit, { jobs, phrases }: Recorded) {
  /** A phrase that makes something: why a person should look at it, and whether one has. */
  const reviewItems = table(
    "review_items",
    {
      phrase: text("phrase")
        .primaryKey()
        .references(() => phrases.id),
      site: text("site").notNull(),
      job: text("job")
        .notNull()
        .references(() => jobs.id),
      /** when its job started and when it was said, to keep the phrases of a job together */
      startedAt: text("started_at").notNull(),
      saidAt: text("said_at").notNull(),
      /** the valve its job is about; "" where none was named */
      tag: text("tag").notNull(),
      /** the place of its gravest reason in REASONS; CERTAIN where there is none */
      weight: integer("weight").notNull(),
      /** reasonSchema, a list as JSON */
      reasons: text("reasons").notNull(),
      /** the words as they are read now: the newest correction, or as heard */
      text: text("text").notNull(),
      /** the phrases said just before it, for whoever was not there: a list as JSON */
      before: text("before").notNull().default("[]"),
      /** what it puts into the record, with general parts taken for the valve's own: entrySchema, a list as JSON */
      entries: text("entries").notNull(),
      /** what the phrase means as it is read now: a decision stands only on what it was made of */
      meaning: text("meaning").notNull(),
      state: text("state", { enum: ["open", "asked", "settled"] }).notNull(),
    },
    (t) => [
      index("review_items_of_all").on(t.state, t.weight, t.startedAt, t.job, t.saidAt, t.phrase),
      index("review_items_of_site").on(t.site, t.state, t.weight, t.startedAt, t.job, t.saidAt, t.phrase),
      index("review_items_of_job").on(t.job, t.state, t.weight),
    ],
  );

  /** What a person decided of a phrase. */
  const decisions = table(
    "decisions",
    {
      id: text("id").primaryKey(),
      site: text("site").notNull(),
      job: text("job")
        .notNull()
        .references(() => jobs.id),
      phrase: text("phrase")
        .notNull()
        .references(() => phrases.id),
      /** 1 the first of this phrase */
      n: integer("n").notNull(),
      what: text("what", { enum: ["accepted", "amended", "struck", "asked", "returned"] }).notNull(),
      /** what the phrase meant when it was decided, after the amendment where there was one */
      meaning: text("meaning").notNull(),
      /** the words put in place, the reason, or the question */
      words: text("words"),
      /** the correction that came of it */
      correction: text("correction"),
      person: text("person"),
      by: text("by").notNull(),
      madeAt: text("made_at").notNull(),
    },
    (t) => [
      index("decisions_of_site_by_phrase").on(t.site, t.phrase, t.n),
      index("decisions_of_site_by_job").on(t.site, t.job),
    ],
  );

  /** What a technician answered to a question. */
  const answers = table(
    "answers",
    {
      id: text("id").primaryKey(),
      /** the decision that asked */
      question: text("question")
        .notNull()
        .references(() => decisions.id),
      phrase: text("phrase").notNull(),
      text: text("text").notNull(),
      how: text("how", { enum: ["typed", "heard"] }).notNull(),
      person: text("person"),
      by: text("by").notNull(),
      madeAt: text("made_at").notNull(),
    },
    (t) => [index("answers_of_phrase").on(t.phrase, t.madeAt, t.id), index("answers_of_question").on(t.question)],
  );

  /** Who signed a job, and who opened it again, and why. The newest stands. */
  const signatures = table(
    "signatures",
    {
      id: text("id").notNull(),
      site: text("site").notNull(),
      job: text("job")
        .notNull()
        .references(() => jobs.id),
      n: integer("n").notNull(),
      act: text("act", { enum: ["signed", "reopened"] }).notNull(),
      /** phrases the job held when it was signed: what came later was not signed */
      phrases: integer("phrases").notNull(),
      why: text("why"),
      person: text("person"),
      by: text("by").notNull(),
      madeAt: text("made_at").notNull(),
    },
    (t) => [primaryKey({ columns: [t.job, t.n] }), index("signatures_by_id").on(t.id)],
  );

  /** Who does what was left open at a valve: given to a person, or taken away. The newest of a follow-up stands. */
  const followUpOwners = table(
    "follow_up_owners",
    {
      id: text("id").notNull(),
      site: text("site").notNull(),
      tag: text("tag").notNull(),
      /** which follow-up of the valve: `followUpKey` */
      key: text("key").notNull(),
      n: integer("n").notNull(),
      /** a person's id; null: taken away */
      owner: text("owner"),
      person: text("person"),
      by: text("by").notNull(),
      madeAt: text("made_at").notNull(),
    },
    (t) => [primaryKey({ columns: [t.site, t.tag, t.key, t.n] }), index("follow_up_owners_by_id").on(t.id)],
  );

  return { reviewItems, decisions, answers, signatures, followUpOwners };
}

/** As libSQL has them; every query is written with these: see kit.pg.ts. */
export const { reviewItems, decisions, answers, signatures, followUpOwners } = reviewTables(lite, { jobs, phrases });
