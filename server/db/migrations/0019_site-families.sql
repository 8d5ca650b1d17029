CREATE TABLE `site_families` (
	`site` text NOT NULL,
	`family` text NOT NULL,
	`number` integer NOT NULL,
	`known` text,
	`made_at` text NOT NULL,
	PRIMARY KEY(`site`, `family`, `number`)
);

--> statement-breakpoint
CREATE TRIGGER `site_families_moved` BEFORE INSERT ON `site_families` WHEN EXISTS (SELECT 1 FROM `moved_sites` WHERE `site` = NEW.`site`)
BEGIN
  SELECT RAISE(ABORT, 'the site has moved');
END;
