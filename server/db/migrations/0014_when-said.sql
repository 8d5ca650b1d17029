-- two of these are their key and nothing else: without a rowid they take half the room
CREATE TABLE `days_to_list` (
	`site` text PRIMARY KEY NOT NULL,
	`before_place` text NOT NULL
);
--> statement-breakpoint
CREATE TABLE `word_days` (
	`site` text NOT NULL,
	`word` text NOT NULL,
	`day` text NOT NULL,
	PRIMARY KEY(`site`, `word`, `day`)
) WITHOUT ROWID;
--> statement-breakpoint
CREATE TABLE `words_said` (
	`site` text NOT NULL,
	`word` text NOT NULL,
	PRIMARY KEY(`site`, `word`)
) WITHOUT ROWID;
--> statement-breakpoint
CREATE INDEX `jobs_of_valve` ON `jobs` (`site`,`tag`,`started_at`,`id`);--> statement-breakpoint
CREATE INDEX `phrases_of_site_by_time` ON `phrases` (`site`,`said_at`,`id`);
--> statement-breakpoint
-- what was said before is listed by the server while it runs: see server/when-said
INSERT INTO `days_to_list` SELECT DISTINCT `site`, ':' FROM `phrases`;
