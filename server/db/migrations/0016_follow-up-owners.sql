CREATE TABLE `follow_up_owners` (
	`id` text NOT NULL,
	`site` text NOT NULL,
	`tag` text NOT NULL,
	`key` text NOT NULL,
	`n` integer NOT NULL,
	`owner` text,
	`person` text,
	`by` text NOT NULL,
	`made_at` text NOT NULL,
	PRIMARY KEY(`site`, `tag`, `key`, `n`)
);
--> statement-breakpoint
CREATE INDEX `follow_up_owners_by_id` ON `follow_up_owners` (`id`);
--> statement-breakpoint
CREATE TRIGGER `follow_up_owners_moved` BEFORE INSERT ON `follow_up_owners` WHEN EXISTS (SELECT 1 FROM `moved_sites` WHERE `site` = NEW.`site`)
BEGIN
  SELECT RAISE(ABORT, 'the site has moved');
END;
