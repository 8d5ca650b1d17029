CREATE INDEX `jobs_stale_of_all` ON `jobs` (`stale`,`site`);--> statement-breakpoint
CREATE INDEX `valve_tags_stale_of_all` ON `valve_tags` (`stale`,`site`,`tag`);