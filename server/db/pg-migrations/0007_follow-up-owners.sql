CREATE TABLE "follow_up_owners" (
	"id" text COLLATE "C" NOT NULL,
	"site" text COLLATE "C" NOT NULL,
	"tag" text COLLATE "C" NOT NULL,
	"key" text COLLATE "C" NOT NULL,
	"n" bigint NOT NULL,
	"owner" text COLLATE "C",
	"person" text COLLATE "C",
	"by" text COLLATE "C" NOT NULL,
	"made_at" text COLLATE "C" NOT NULL,
	CONSTRAINT "follow_up_owners_site_tag_key_n_pk" PRIMARY KEY("site","tag","key","n")
);
--> statement-breakpoint
CREATE INDEX "follow_up_owners_by_id" ON "follow_up_owners" USING btree ("id");
--> statement-breakpoint
CREATE TRIGGER follow_up_owners_moved BEFORE INSERT ON follow_up_owners FOR EACH ROW EXECUTE FUNCTION refuse_moved();
