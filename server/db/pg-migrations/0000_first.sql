CREATE TABLE "answers" (
	"id" text COLLATE "C" PRIMARY KEY NOT NULL,
	"question" text COLLATE "C" NOT NULL,
	"phrase" text COLLATE "C" NOT NULL,
	"text" text COLLATE "C" NOT NULL,
	"how" text COLLATE "C" NOT NULL,
	"person" text COLLATE "C",
	"by" text COLLATE "C" NOT NULL,
	"made_at" text COLLATE "C" NOT NULL
);
--> statement-breakpoint
CREATE TABLE "audit" (
	"n" bigint PRIMARY KEY NOT NULL,
	"at" text COLLATE "C" NOT NULL,
	"person" text COLLATE "C",
	"by" text COLLATE "C" NOT NULL,
	"act" text COLLATE "C" NOT NULL,
	"about" text COLLATE "C" NOT NULL,
	"hash" text COLLATE "C" NOT NULL
);
--> statement-breakpoint
CREATE TABLE "calendar_feeds" (
	"site" text COLLATE "C" PRIMARY KEY NOT NULL,
	"secret_hash" text COLLATE "C" NOT NULL,
	"made_at" text COLLATE "C" NOT NULL
);
--> statement-breakpoint
CREATE TABLE "corrections" (
	"id" text COLLATE "C" PRIMARY KEY NOT NULL,
	"site" text COLLATE "C" NOT NULL,
	"job" text COLLATE "C" NOT NULL,
	"phrase" text COLLATE "C" NOT NULL,
	"text" text COLLATE "C",
	"why" text COLLATE "C",
	"person" text COLLATE "C",
	"made_at" text COLLATE "C" NOT NULL,
	"made_offset" bigint NOT NULL,
	"received_at" text COLLATE "C" NOT NULL
);
--> statement-breakpoint
CREATE TABLE "decisions" (
	"id" text COLLATE "C" PRIMARY KEY NOT NULL,
	"site" text COLLATE "C" NOT NULL,
	"job" text COLLATE "C" NOT NULL,
	"phrase" text COLLATE "C" NOT NULL,
	"n" bigint NOT NULL,
	"what" text COLLATE "C" NOT NULL,
	"meaning" text COLLATE "C" NOT NULL,
	"words" text COLLATE "C",
	"correction" text COLLATE "C",
	"person" text COLLATE "C",
	"by" text COLLATE "C" NOT NULL,
	"made_at" text COLLATE "C" NOT NULL
);
--> statement-breakpoint
CREATE TABLE "devices" (
	"id" text COLLATE "C" PRIMARY KEY NOT NULL,
	"person" text COLLATE "C" NOT NULL,
	"name" text COLLATE "C" NOT NULL,
	"token_hash" text COLLATE "C" NOT NULL,
	"enrolled_at" text COLLATE "C" NOT NULL,
	"until" text COLLATE "C",
	"revoked_at" text COLLATE "C"
);
--> statement-breakpoint
CREATE TABLE "due" (
	"site" text COLLATE "C" NOT NULL,
	"tag" text COLLATE "C" NOT NULL,
	"task" text COLLATE "C" NOT NULL,
	"due_on" text COLLATE "C" NOT NULL,
	"body" text COLLATE "C" NOT NULL,
	"rank" bigint DEFAULT 1 NOT NULL,
	CONSTRAINT "due_site_tag_task_pk" PRIMARY KEY("site","tag","task")
);
--> statement-breakpoint
CREATE TABLE "entries" (
	"site" text COLLATE "C" NOT NULL,
	"job" text COLLATE "C" NOT NULL,
	"n" bigint NOT NULL,
	"tag" text COLLATE "C" NOT NULL,
	"started_at" text COLLATE "C" NOT NULL,
	"phrase" text COLLATE "C",
	"type" text COLLATE "C" NOT NULL,
	"body" text COLLATE "C" NOT NULL,
	"reader" text COLLATE "C" NOT NULL,
	CONSTRAINT "entries_site_job_n_pk" PRIMARY KEY("site","job","n")
);
--> statement-breakpoint
CREATE TABLE "jobs" (
	"id" text COLLATE "C" PRIMARY KEY NOT NULL,
	"site" text COLLATE "C" NOT NULL,
	"tag" text COLLATE "C",
	"started_at" text COLLATE "C" NOT NULL,
	"started_offset" bigint NOT NULL,
	"received_at" text COLLATE "C" NOT NULL,
	"revision" bigint NOT NULL,
	"stale" bigint NOT NULL,
	"unweighed" bigint DEFAULT 1 NOT NULL,
	"signed" bigint DEFAULT 0 NOT NULL
);
--> statement-breakpoint
CREATE TABLE "keepsakes" (
	"id" text COLLATE "C" PRIMARY KEY NOT NULL,
	"site" text COLLATE "C" NOT NULL,
	"kind" text COLLATE "C" NOT NULL,
	"job" text COLLATE "C" NOT NULL,
	"phrase" text COLLATE "C",
	"sha256" text COLLATE "C" NOT NULL,
	"type" text COLLATE "C" NOT NULL,
	"bytes" bigint NOT NULL,
	"seconds" double precision,
	"width" bigint,
	"height" bigint,
	"taken_at" text COLLATE "C" NOT NULL,
	"taken_offset" bigint NOT NULL,
	"device" text COLLATE "C",
	"person" text COLLATE "C",
	"received_at" text COLLATE "C" NOT NULL,
	"removed_at" text COLLATE "C"
);
--> statement-breakpoint
CREATE TABLE "one_time_codes" (
	"code_hash" text COLLATE "C" PRIMARY KEY NOT NULL,
	"person" text COLLATE "C" NOT NULL,
	"for" text COLLATE "C" NOT NULL,
	"until" text COLLATE "C",
	"expires_at" text COLLATE "C" NOT NULL,
	"used_at" text COLLATE "C"
);
--> statement-breakpoint
CREATE TABLE "people" (
	"id" text COLLATE "C" PRIMARY KEY NOT NULL,
	"name" text COLLATE "C" NOT NULL,
	"name_key" text COLLATE "C" NOT NULL,
	"roles" text COLLATE "C" NOT NULL,
	"enrolled_at" text COLLATE "C" NOT NULL,
	"left_at" text COLLATE "C",
	"password" text COLLATE "C"
);
--> statement-breakpoint
CREATE TABLE "phrases" (
	"id" text COLLATE "C" PRIMARY KEY NOT NULL,
	"site" text COLLATE "C" NOT NULL,
	"job" text COLLATE "C" NOT NULL,
	"device" text COLLATE "C",
	"person" text COLLATE "C",
	"text" text COLLATE "C" NOT NULL,
	"said_at" text COLLATE "C" NOT NULL,
	"said_offset" bigint NOT NULL,
	"how" text COLLATE "C" NOT NULL,
	"confidence" double precision,
	"reader" text COLLATE "C" NOT NULL,
	"received_at" text COLLATE "C" NOT NULL
);
--> statement-breakpoint
CREATE TABLE "readings" (
	"phrase" text COLLATE "C" PRIMARY KEY NOT NULL,
	"site" text COLLATE "C" NOT NULL,
	"job" text COLLATE "C" NOT NULL,
	"reader" text COLLATE "C" NOT NULL,
	"entries" text COLLATE "C" NOT NULL,
	"unread" text COLLATE "C" NOT NULL,
	"ask" text COLLATE "C" NOT NULL,
	"marks" text COLLATE "C" NOT NULL,
	"alerts" text COLLATE "C" NOT NULL,
	"touched" text COLLATE "C" NOT NULL
);
--> statement-breakpoint
CREATE TABLE "report_recipients" (
	"site" text COLLATE "C" NOT NULL,
	"day" text COLLATE "C" NOT NULL,
	"version" bigint NOT NULL,
	"address" text COLLATE "C" NOT NULL,
	"state" text COLLATE "C" NOT NULL,
	"reply" text COLLATE "C",
	"at" text COLLATE "C",
	CONSTRAINT "report_recipients_site_day_version_address_pk" PRIMARY KEY("site","day","version","address")
);
--> statement-breakpoint
CREATE TABLE "report_settings" (
	"site" text COLLATE "C" PRIMARY KEY NOT NULL,
	"recipients" text COLLATE "C" NOT NULL,
	"hour" text COLLATE "C" NOT NULL,
	"weekends" bigint NOT NULL,
	"quiet" bigint NOT NULL,
	"since" text COLLATE "C" NOT NULL,
	"last_day" text COLLATE "C" NOT NULL
);
--> statement-breakpoint
CREATE TABLE "report_versions" (
	"site" text COLLATE "C" NOT NULL,
	"day" text COLLATE "C" NOT NULL,
	"version" bigint NOT NULL,
	"message_id" text COLLATE "C" NOT NULL,
	"record" text COLLATE "C" NOT NULL,
	"sender" text COLLATE "C" NOT NULL,
	"message" "bytea" NOT NULL,
	"made_at" text COLLATE "C" NOT NULL,
	"state" text COLLATE "C" NOT NULL,
	"claim" text COLLATE "C" DEFAULT '' NOT NULL,
	"attempts" bigint NOT NULL,
	"asked_at" text COLLATE "C" NOT NULL,
	"next_try_at" text COLLATE "C" NOT NULL,
	"settled_at" text COLLATE "C",
	"problem" text COLLATE "C",
	CONSTRAINT "report_versions_site_day_version_pk" PRIMARY KEY("site","day","version")
);
--> statement-breakpoint
CREATE TABLE "review_items" (
	"phrase" text COLLATE "C" PRIMARY KEY NOT NULL,
	"site" text COLLATE "C" NOT NULL,
	"job" text COLLATE "C" NOT NULL,
	"started_at" text COLLATE "C" NOT NULL,
	"said_at" text COLLATE "C" NOT NULL,
	"tag" text COLLATE "C" NOT NULL,
	"weight" bigint NOT NULL,
	"reasons" text COLLATE "C" NOT NULL,
	"text" text COLLATE "C" NOT NULL,
	"before" text COLLATE "C" DEFAULT '[]' NOT NULL,
	"entries" text COLLATE "C" NOT NULL,
	"meaning" text COLLATE "C" NOT NULL,
	"state" text COLLATE "C" NOT NULL
);
--> statement-breakpoint
CREATE TABLE "sessions" (
	"id" text COLLATE "C" PRIMARY KEY NOT NULL,
	"person" text COLLATE "C" NOT NULL,
	"token_hash" text COLLATE "C" NOT NULL,
	"began_at" text COLLATE "C" NOT NULL,
	"used_at" text COLLATE "C" NOT NULL,
	"ended_at" text COLLATE "C"
);
--> statement-breakpoint
CREATE TABLE "sign_in_tries" (
	"key" text COLLATE "C" PRIMARY KEY NOT NULL,
	"failures" bigint NOT NULL,
	"since" text COLLATE "C" NOT NULL,
	"locked_until" text COLLATE "C"
);
--> statement-breakpoint
CREATE TABLE "signatures" (
	"id" text COLLATE "C" NOT NULL,
	"site" text COLLATE "C" NOT NULL,
	"job" text COLLATE "C" NOT NULL,
	"n" bigint NOT NULL,
	"act" text COLLATE "C" NOT NULL,
	"phrases" bigint NOT NULL,
	"why" text COLLATE "C",
	"person" text COLLATE "C",
	"by" text COLLATE "C" NOT NULL,
	"made_at" text COLLATE "C" NOT NULL,
	CONSTRAINT "signatures_job_n_pk" PRIMARY KEY("job","n")
);
--> statement-breakpoint
CREATE TABLE "site_keeping" (
	"site" text COLLATE "C" PRIMARY KEY NOT NULL,
	"clips" text COLLATE "C" NOT NULL,
	"days" bigint NOT NULL
);
--> statement-breakpoint
CREATE TABLE "site_stock" (
	"site" text COLLATE "C" NOT NULL,
	"part" text COLLATE "C" NOT NULL,
	"count" bigint NOT NULL,
	CONSTRAINT "site_stock_site_part_pk" PRIMARY KEY("site","part")
);
--> statement-breakpoint
CREATE TABLE "site_words" (
	"id" text COLLATE "C" PRIMARY KEY NOT NULL,
	"site" text COLLATE "C" NOT NULL,
	"say" text COLLATE "C" NOT NULL,
	"as_code" text COLLATE "C" NOT NULL,
	"taught_at" text COLLATE "C" NOT NULL,
	"withdrawn" bigint NOT NULL
);
--> statement-breakpoint
CREATE TABLE "sites" (
	"site" text COLLATE "C" PRIMARY KEY NOT NULL,
	"name" text COLLATE "C" NOT NULL,
	"zone" text COLLATE "C" NOT NULL,
	"created_at" text COLLATE "C" NOT NULL
);
--> statement-breakpoint
CREATE TABLE "valve_records" (
	"site" text COLLATE "C" NOT NULL,
	"tag" text COLLATE "C" NOT NULL,
	"number" bigint NOT NULL,
	"known" text COLLATE "C" NOT NULL,
	"made_at" text COLLATE "C" NOT NULL,
	CONSTRAINT "valve_records_site_tag_number_pk" PRIMARY KEY("site","tag","number")
);
--> statement-breakpoint
CREATE TABLE "valve_states" (
	"site" text COLLATE "C" NOT NULL,
	"tag" text COLLATE "C" NOT NULL,
	"reader" text COLLATE "C" NOT NULL,
	"open" text COLLATE "C" NOT NULL,
	"service" text COLLATE "C" NOT NULL,
	"last_on" text COLLATE "C" NOT NULL,
	"family" text COLLATE "C" DEFAULT '' NOT NULL,
	"lives" text COLLATE "C" DEFAULT '[]' NOT NULL,
	CONSTRAINT "valve_states_site_tag_pk" PRIMARY KEY("site","tag")
);
--> statement-breakpoint
CREATE TABLE "valve_tags" (
	"site" text COLLATE "C" NOT NULL,
	"tag" text COLLATE "C" NOT NULL,
	"stale" bigint NOT NULL,
	CONSTRAINT "valve_tags_site_tag_pk" PRIMARY KEY("site","tag")
);
--> statement-breakpoint
ALTER TABLE "answers" ADD CONSTRAINT "answers_question_decisions_id_fk" FOREIGN KEY ("question") REFERENCES "public"."decisions"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "corrections" ADD CONSTRAINT "corrections_job_jobs_id_fk" FOREIGN KEY ("job") REFERENCES "public"."jobs"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "corrections" ADD CONSTRAINT "corrections_phrase_phrases_id_fk" FOREIGN KEY ("phrase") REFERENCES "public"."phrases"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "decisions" ADD CONSTRAINT "decisions_job_jobs_id_fk" FOREIGN KEY ("job") REFERENCES "public"."jobs"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "decisions" ADD CONSTRAINT "decisions_phrase_phrases_id_fk" FOREIGN KEY ("phrase") REFERENCES "public"."phrases"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "devices" ADD CONSTRAINT "devices_person_people_id_fk" FOREIGN KEY ("person") REFERENCES "public"."people"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "keepsakes" ADD CONSTRAINT "keepsakes_job_jobs_id_fk" FOREIGN KEY ("job") REFERENCES "public"."jobs"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "keepsakes" ADD CONSTRAINT "keepsakes_phrase_phrases_id_fk" FOREIGN KEY ("phrase") REFERENCES "public"."phrases"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "one_time_codes" ADD CONSTRAINT "one_time_codes_person_people_id_fk" FOREIGN KEY ("person") REFERENCES "public"."people"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "phrases" ADD CONSTRAINT "phrases_job_jobs_id_fk" FOREIGN KEY ("job") REFERENCES "public"."jobs"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "readings" ADD CONSTRAINT "readings_phrase_phrases_id_fk" FOREIGN KEY ("phrase") REFERENCES "public"."phrases"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "review_items" ADD CONSTRAINT "review_items_phrase_phrases_id_fk" FOREIGN KEY ("phrase") REFERENCES "public"."phrases"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "review_items" ADD CONSTRAINT "review_items_job_jobs_id_fk" FOREIGN KEY ("job") REFERENCES "public"."jobs"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "sessions" ADD CONSTRAINT "sessions_person_people_id_fk" FOREIGN KEY ("person") REFERENCES "public"."people"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
ALTER TABLE "signatures" ADD CONSTRAINT "signatures_job_jobs_id_fk" FOREIGN KEY ("job") REFERENCES "public"."jobs"("id") ON DELETE no action ON UPDATE no action;--> statement-breakpoint
CREATE INDEX "answers_of_phrase" ON "answers" USING btree ("phrase","made_at","id");--> statement-breakpoint
CREATE INDEX "calendar_feeds_by_secret" ON "calendar_feeds" USING btree ("secret_hash");--> statement-breakpoint
CREATE INDEX "corrections_in_order" ON "corrections" USING btree ("site","job","made_at","id");--> statement-breakpoint
CREATE INDEX "decisions_of_phrase" ON "decisions" USING btree ("phrase","n");--> statement-breakpoint
CREATE INDEX "decisions_of_job" ON "decisions" USING btree ("job");--> statement-breakpoint
CREATE UNIQUE INDEX "devices_by_token" ON "devices" USING btree ("token_hash");--> statement-breakpoint
CREATE INDEX "devices_of_person" ON "devices" USING btree ("person");--> statement-breakpoint
CREATE INDEX "due_by_date" ON "due" USING btree ("site","due_on","tag");--> statement-breakpoint
CREATE INDEX "due_by_urgency" ON "due" USING btree ("rank","due_on","site","tag","task");--> statement-breakpoint
CREATE INDEX "due_of_site_by_urgency" ON "due" USING btree ("site","rank","due_on","tag","task");--> statement-breakpoint
CREATE INDEX "entries_by_valve" ON "entries" USING btree ("site","tag","started_at","job","n");--> statement-breakpoint
CREATE INDEX "jobs_stale" ON "jobs" USING btree ("site","stale");--> statement-breakpoint
CREATE INDEX "jobs_stale_of_all" ON "jobs" USING btree ("stale","site");--> statement-breakpoint
CREATE INDEX "jobs_by_day" ON "jobs" USING btree ("site","started_at","id");--> statement-breakpoint
CREATE INDEX "jobs_unweighed" ON "jobs" USING btree ("unweighed","site");--> statement-breakpoint
CREATE INDEX "jobs_unsigned" ON "jobs" USING btree ("site","signed","started_at","id");--> statement-breakpoint
CREATE INDEX "jobs_unsigned_of_all" ON "jobs" USING btree ("signed","started_at","id");--> statement-breakpoint
CREATE INDEX "keepsakes_of_job" ON "keepsakes" USING btree ("site","job","taken_at","id");--> statement-breakpoint
CREATE INDEX "keepsakes_by_age" ON "keepsakes" USING btree ("site","kind","removed_at","taken_at");--> statement-breakpoint
CREATE INDEX "keepsakes_by_content" ON "keepsakes" USING btree ("sha256");--> statement-breakpoint
CREATE UNIQUE INDEX "people_by_name" ON "people" USING btree ("name_key") WHERE left_at is null;--> statement-breakpoint
CREATE INDEX "phrases_in_order" ON "phrases" USING btree ("site","job","said_at","id");--> statement-breakpoint
CREATE INDEX "phrases_by_time" ON "phrases" USING btree ("said_at","id");--> statement-breakpoint
CREATE INDEX "readings_of_job" ON "readings" USING btree ("site","job");--> statement-breakpoint
CREATE INDEX "report_versions_waiting" ON "report_versions" USING btree ("state","next_try_at");--> statement-breakpoint
CREATE INDEX "review_items_of_all" ON "review_items" USING btree ("state","weight","started_at","job","said_at","phrase");--> statement-breakpoint
CREATE INDEX "review_items_of_site" ON "review_items" USING btree ("site","state","weight","started_at","job","said_at","phrase");--> statement-breakpoint
CREATE INDEX "review_items_of_job" ON "review_items" USING btree ("job","state","weight");--> statement-breakpoint
CREATE UNIQUE INDEX "sessions_by_token" ON "sessions" USING btree ("token_hash");--> statement-breakpoint
CREATE INDEX "sessions_of_person" ON "sessions" USING btree ("person");--> statement-breakpoint
CREATE INDEX "signatures_by_id" ON "signatures" USING btree ("id");--> statement-breakpoint
CREATE INDEX "site_words_of_site" ON "site_words" USING btree ("site","withdrawn","say");--> statement-breakpoint
CREATE INDEX "valve_states_like" ON "valve_states" USING btree ("site","family","service","last_on");--> statement-breakpoint
CREATE INDEX "valve_tags_stale" ON "valve_tags" USING btree ("site","stale","tag");--> statement-breakpoint
CREATE INDEX "valve_tags_stale_of_all" ON "valve_tags" USING btree ("stale","site","tag");--> statement-breakpoint
CREATE INDEX "valve_tags_by_tag" ON "valve_tags" USING btree ("tag");