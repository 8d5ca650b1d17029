CREATE TABLE "site_families" (
	"site" text COLLATE "C" NOT NULL,
	"family" text COLLATE "C" NOT NULL,
	"number" bigint NOT NULL,
	"known" text COLLATE "C",
	"made_at" text COLLATE "C" NOT NULL,
	CONSTRAINT "site_families_site_family_number_pk" PRIMARY KEY("site","family","number")
);

--> statement-breakpoint
CREATE TRIGGER site_families_moved BEFORE INSERT ON site_families FOR EACH ROW EXECUTE FUNCTION refuse_moved();
