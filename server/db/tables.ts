import { type Kit, lite } from "./kit.lite.ts";

/**
 * What the log keeps. Phrases, jobs, valve records and corrections are only ever added;
 * readings, entries, valve states and due dates are derived from them and may be made again at any time.
 * Ids are text made by the client. A moment is UTC text of fixed width (see moments.ts), so that text order
 * is time order in every engine. `site` is "" where none was said.
 */
export function recordTables({ table, text, integer, real, index, primaryKey }: Kit) {
  const sites = table("sites", {
    site: text("site").primaryKey(),
    name: text("name").notNull(),
    /** IANA zone: "today" is the site's */
    zone: text("zone").notNull(),
    createdAt: text("created_at").notNull(),
  });

  /** Words taught at a site, beside those the reader ships with. A row is only ever withdrawn. */
  const siteWords = table(
    "site_words",
    {
      id: text("id").primaryKey(),
      /** "" for a word of every site */
      site: text("site").notNull(),
      say: text("say").notNull(),
      /** what it means, as in taughtWordSchema, as JSON */
      as: text("as_code").notNull(),
      /** when it was taught, as sent */
      at: text("taught_at").notNull(),
      /** 1 where it is no longer read */
      withdrawn: integer("withdrawn").notNull(),
    },
    (t) => [index("site_words_of_site").on(t.site, t.withdrawn, t.say)],
  );

  /** Each row is a statement about a valve as set up by a person; the newest stands, the older ones stay. */
  const valveRecords = table(
    "valve_records",
    {
      site: text("site").notNull(),
      tag: text("tag").notNull(),
      number: integer("number").notNull(),
      /** valveSchema as JSON */
      known: text("known").notNull(),
      madeAt: text("made_at").notNull(),
    },
    (t) => [primaryKey({ columns: [t.site, t.tag, t.number] })],
  );

  const jobs = table(
    "jobs",
    {
      id: text("id").primaryKey(),
      site: text("site").notNull(),
      tag: text("tag"),
      startedAt: text("started_at").notNull(),
      startedOffset: integer("started_offset").notNull(),
      receivedAt: text("received_at").notNull(),
      /** goes up whenever the job's phrases or their reading change */
      revision: integer("revision").notNull(),
      /** 1 where the states of its valves must be reckoned again */
      stale: integer("stale").notNull(),
      /** 1 where its phrases must be weighed again for the lead: see server/review */
      unweighed: integer("unweighed").notNull().default(1),
      /** 1 where a lead signed it and nothing came since: it is read no more otherwise */
      signed: integer("signed").notNull().default(0),
    },
    (t) => [
      index("jobs_stale").on(t.site, t.stale),
      index("jobs_stale_of_all").on(t.stale, t.site),
      index("jobs_by_day").on(t.site, t.startedAt, t.id),
      index("jobs_by_time").on(t.startedAt, t.id),
      index("jobs_of_valve").on(t.site, t.tag, t.startedAt, t.id),
      index("jobs_unweighed").on(t.unweighed, t.site),
      index("jobs_unsigned").on(t.site, t.signed, t.startedAt, t.id),
      index("jobs_unsigned_of_all").on(t.signed, t.startedAt, t.id),
    ],
  );

  const phrases = table(
    "phrases",
    {
      id: text("id").primaryKey(),
      site: text("site").notNull(),
      job: text("job")
        .notNull()
        .references(() => jobs.id),
      device: text("device"),
      person: text("person"),
      /** as heard, letter for letter */
      text: text("text").notNull(),
      saidAt: text("said_at").notNull(),
      saidOffset: integer("said_offset").notNull(),
      how: text("how", { enum: ["typed", "heard"] }).notNull(),
      confidence: real("confidence"),
      /** the reader here when it arrived */
      reader: text("reader").notNull(),
      receivedAt: text("received_at").notNull(),
    },
    (t) => [
      index("phrases_in_order").on(t.site, t.job, t.saidAt, t.id),
      index("phrases_of_site_by_time").on(t.site, t.saidAt, t.id),
      index("phrases_by_time").on(t.saidAt, t.id),
    ],
  );

  /**
   * On which days a word was said at a site, or read in the place of what was said then; or a part noted in a condition,
   * which is two codes with a space between: see server/when-said.
   */
  const wordDays = table(
    "word_days",
    {
      site: text("site").notNull(),
      word: text("word").notNull(),
      /** of the moment as stored, in UTC */
      day: text("day").notNull(),
    },
    (t) => [primaryKey({ columns: [t.site, t.word, t.day] })],
  );

  /** Every word of `word_days` once a site, so that those which hold some letters are found among the few there are. */
  const wordsSaid = table("words_said", { site: text("site").notNull(), word: text("word").notNull() }, (t) => [
    primaryKey({ columns: [t.site, t.word] }),
  ]);

  /** Sites of which the phrases before this place are not among those days yet; a site without a row has all of them there. */
  const daysToList = table("days_to_list", {
    site: text("site").primaryKey(),
    before: text("before_place").notNull(),
  });

  /** A later word on a phrase: strike it, or read other words in its place. The phrase itself stays as it was. */
  const corrections = table(
    "corrections",
    {
      id: text("id").primaryKey(),
      site: text("site").notNull(),
      job: text("job")
        .notNull()
        .references(() => jobs.id),
      phrase: text("phrase")
        .notNull()
        .references(() => phrases.id),
      /** the words to read instead; null strikes the phrase */
      text: text("text"),
      why: text("why"),
      person: text("person"),
      madeAt: text("made_at").notNull(),
      madeOffset: integer("made_offset").notNull(),
      receivedAt: text("received_at").notNull(),
    },
    (t) => [index("corrections_in_order").on(t.site, t.job, t.madeAt, t.id)],
  );

  /**
   * What is kept beside the words: the sound of a phrase, or a photograph. The row says what it is; its bytes are a file
   * named by their hash (server/keepsakes/files.ts). A row stays when its bytes are removed, so that the same id sent
   * once more is known and not kept again.
   */
  const keepsakes = table(
    "keepsakes",
    {
      id: text("id").primaryKey(),
      site: text("site").notNull(),
      kind: text("kind", { enum: ["clip", "photo"] }).notNull(),
      job: text("job")
        .notNull()
        .references(() => jobs.id),
      /** null: of the job, not of one phrase */
      phrase: text("phrase").references(() => phrases.id),
      /** of the bytes as kept, without what was stripped, in hex */
      sha256: text("sha256").notNull(),
      /** what the bytes are, by looking at them */
      type: text("type").notNull(),
      bytes: integer("bytes").notNull(),
      seconds: real("seconds"),
      width: integer("width"),
      height: integer("height"),
      takenAt: text("taken_at").notNull(),
      takenOffset: integer("taken_offset").notNull(),
      device: text("device"),
      person: text("person"),
      receivedAt: text("received_at").notNull(),
      /** when its bytes were removed; null while they are here */
      removedAt: text("removed_at"),
    },
    (t) => [
      index("keepsakes_of_job").on(t.site, t.job, t.takenAt, t.id),
      index("keepsakes_by_age").on(t.site, t.kind, t.removedAt, t.takenAt),
      index("keepsakes_by_content").on(t.sha256),
    ],
  );

  /** What a site does with the sound of phrases; a site without a row goes by KEEPING_UNLESS_SAID. */
  const siteKeeping = table("site_keeping", {
    site: text("site").primaryKey(),
    clips: text("clips", { enum: ["none", "for_days", "for_good"] }).notNull(),
    days: integer("days").notNull(),
  });

  /** What a phrase became when it was heard in its job. */
  const readings = table(
    "readings",
    {
      phrase: text("phrase")
        .primaryKey()
        .references(() => phrases.id),
      site: text("site").notNull(),
      job: text("job").notNull(),
      /** the reader that made it */
      reader: text("reader").notNull(),
      entries: text("entries").notNull(),
      unread: text("unread").notNull(),
      ask: text("ask").notNull(),
      marks: text("marks").notNull(),
      alerts: text("alerts").notNull(),
      touched: text("touched").notNull(),
    },
    (t) => [index("readings_of_job").on(t.site, t.job)],
  );

  /** The entries that stand after a job's last phrase, one a row, in order. */
  const entries = table(
    "entries",
    {
      site: text("site").notNull(),
      job: text("job").notNull(),
      n: integer("n").notNull(),
      /** the valve they belong to; "" where none was named */
      tag: text("tag").notNull(),
      /** when the job started: a valve's history in one look-up */
      startedAt: text("started_at").notNull(),
      phrase: text("phrase"),
      type: text("type").notNull(),
      body: text("body").notNull(),
      reader: text("reader").notNull(),
    },
    (t) => [
      primaryKey({ columns: [t.site, t.job, t.n] }),
      index("entries_by_valve").on(t.site, t.tag, t.startedAt, t.job, t.n),
    ],
  );

  /** What follows for a valve as it stands after its last job; absent where it must be reckoned again. */
  const valveStates = table(
    "valve_states",
    {
      site: text("site").notNull(),
      tag: text("tag").notNull(),
      reader: text("reader").notNull(),
      /** follow-ups still open, as JSON */
      open: text("open").notNull(),
      service: text("service").notNull(),
      /** "" where no job is known */
      lastOn: text("last_on").notNull(),
      /** as set up; "" where nobody said */
      family: text("family").notNull().default(""),
      /** how long its seat sides lasted in this service, for like valves: lifeSchema, a list as JSON */
      lives: text("lives").notNull().default("[]"),
    },
    (t) => [
      primaryKey({ columns: [t.site, t.tag] }),
      index("valve_states_like").on(t.site, t.family, t.service, t.lastOn),
    ],
  );

  /** What the states have open, a row each, in the order in which it is shown: see server/reading/owed.ts. */
  const owed = table(
    "owed",
    {
      site: text("site").notNull(),
      tag: text("tag").notNull(),
      /** which of those that the valve's state has open */
      n: integer("n").notNull(),
      urgency: text("urgency").notNull(),
      /** as in the state */
      lastOn: text("last_on").notNull(),
    },
    (t) => [
      primaryKey({ columns: [t.site, t.tag, t.n] }),
      index("owed_by_urgency").on(t.urgency, t.lastOn, t.site, t.tag, t.n),
      index("owed_of_site_by_urgency").on(t.site, t.urgency, t.lastOn, t.tag, t.n),
    ],
  );

  /** Every tag that a record or an entry has named, so that the due board need not search for them. */
  const valveTags = table(
    "valve_tags",
    {
      site: text("site").notNull(),
      tag: text("tag").notNull(),
      /** 1 where the state must be reckoned again */
      stale: integer("stale").notNull(),
    },
    (t) => [
      primaryKey({ columns: [t.site, t.tag] }),
      index("valve_tags_stale").on(t.site, t.stale, t.tag),
      // for every site at once: among a hundred thousand the few that changed
      index("valve_tags_stale_of_all").on(t.stale, t.site, t.tag),
      index("valve_tags_by_tag").on(t.tag),
    ],
  );

  const due = table(
    "due",
    {
      site: text("site").notNull(),
      tag: text("tag").notNull(),
      task: text("task").notNull(),
      on: text("due_on").notNull(),
      /** dueSchema as JSON */
      body: text("body").notNull(),
      /** 0 where the valve is in severe service, else 1: it comes first whatever the date */
      rank: integer("rank").notNull().default(1),
    },
    (t) => [
      primaryKey({ columns: [t.site, t.tag, t.task] }),
      index("due_by_date").on(t.site, t.on, t.tag),
      index("due_by_urgency").on(t.rank, t.on, t.site, t.tag, t.task),
      index("due_of_site_by_urgency").on(t.site, t.rank, t.on, t.tag, t.task),
    ],
  );

  /** What a site has on its shelves, as it last said. */
  const siteStock = table(
    "site_stock",
    {
      site: text("site").notNull(),
      /** a part, or part/family, or part/family/size */
      part: text("part").notNull(),
      count: integer("count").notNull(),
    },
    (t) => [primaryKey({ columns: [t.site, t.part] })],
  );

  /** Sites whose record is kept in another log now. Triggers hold that nothing more is added to it here. */
  const movedSites = table("moved_sites", {
    site: text("site").primaryKey(),
    /** the address of that log, as people open it; "" while it is being moved */
    to: text("moved_to").notNull(),
    at: text("moved_at").notNull(),
  });

  return {
    sites,
    siteWords,
    valveRecords,
    jobs,
    phrases,
    wordDays,
    wordsSaid,
    daysToList,
    corrections,
    keepsakes,
    siteKeeping,
    readings,
    entries,
    valveStates,
    owed,
    valveTags,
    due,
    siteStock,
    movedSites,
  };
}

/** As libSQL has them; every query is written with these: see kit.pg.ts. */
export const {
  sites,
  siteWords,
  valveRecords,
  jobs,
  phrases,
  wordDays,
  wordsSaid,
  daysToList,
  corrections,
  keepsakes,
  siteKeeping,
  readings,
  entries,
  valveStates,
  owed,
  valveTags,
  due,
  siteStock,
  movedSites,
} = recordTables(lite);
export { siteFamilies } from "./set-up-tables.ts";
