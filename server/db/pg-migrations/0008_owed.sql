CREATE TABLE "owed" (
	"site" text COLLATE "C" NOT NULL,
	"tag" text COLLATE "C" NOT NULL,
	"n" bigint NOT NULL,
	"urgency" text COLLATE "C" NOT NULL,
	"last_on" text COLLATE "C" NOT NULL,
	CONSTRAINT "owed_site_tag_n_pk" PRIMARY KEY("site","tag","n")
);
--> statement-breakpoint
CREATE INDEX "owed_by_urgency" ON "owed" USING btree ("urgency","last_on","site","tag","n");--> statement-breakpoint
CREATE INDEX "owed_of_site_by_urgency" ON "owed" USING btree ("site","urgency","last_on","tag","n");
--> statement-breakpoint
-- what the states have open by now, as server/reading/owed.ts puts it in order
INSERT INTO "owed" ("site", "tag", "n", "urgency", "last_on")
SELECT "site", "tag", one.place - 1,
  CASE
    WHEN one.value ->> 'do' = 'stop' THEN '0'
    WHEN one.value ->> 'when' = 'now' THEN '1'
    WHEN one.value ->> 'when' = 'next_inspection' THEN '3'
    ELSE '2 ' || (one.value ->> 'when')
  END,
  "last_on"
FROM "valve_states", json_array_elements("open"::json) WITH ORDINALITY AS one (value, place);
