CREATE TABLE "moved_sites" (
	"site" text COLLATE "C" PRIMARY KEY NOT NULL,
	"moved_to" text COLLATE "C" NOT NULL,
	"moved_at" text COLLATE "C" NOT NULL
);
