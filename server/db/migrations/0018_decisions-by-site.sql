DROP INDEX `decisions_of_phrase`;--> statement-breakpoint
DROP INDEX `decisions_of_job`;--> statement-breakpoint
CREATE INDEX `decisions_of_site_by_phrase` ON `decisions` (`site`,`phrase`,`n`);--> statement-breakpoint
CREATE INDEX `decisions_of_site_by_job` ON `decisions` (`site`,`job`);