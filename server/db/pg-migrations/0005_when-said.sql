CREATE TABLE "days_to_list" (
	"site" text COLLATE "C" PRIMARY KEY NOT NULL,
	"before_place" text COLLATE "C" NOT NULL
);
--> statement-breakpoint
CREATE TABLE "word_days" (
	"site" text COLLATE "C" NOT NULL,
	"word" text COLLATE "C" NOT NULL,
	"day" text COLLATE "C" NOT NULL,
	CONSTRAINT "word_days_site_word_day_pk" PRIMARY KEY("site","word","day")
);
--> statement-breakpoint
CREATE TABLE "words_said" (
	"site" text COLLATE "C" NOT NULL,
	"word" text COLLATE "C" NOT NULL,
	CONSTRAINT "words_said_site_word_pk" PRIMARY KEY("site","word")
);
--> statement-breakpoint
CREATE INDEX "jobs_of_valve" ON "jobs" USING btree ("site","tag","started_at","id");--> statement-breakpoint
CREATE INDEX "phrases_of_site_by_time" ON "phrases" USING btree ("site","said_at","id");
--> statement-breakpoint
-- what was said before is listed by the server while it runs: see server/when-said
INSERT INTO "days_to_list" SELECT DISTINCT "site", ':' FROM "phrases";
