ALTER TABLE `review_items` ADD `before` text DEFAULT '[]' NOT NULL;--> statement-breakpoint
ALTER TABLE `due` ADD `rank` integer DEFAULT 1 NOT NULL;--> statement-breakpoint
CREATE INDEX `due_by_urgency` ON `due` (`rank`,`due_on`,`site`,`tag`,`task`);--> statement-breakpoint
CREATE INDEX `due_of_site_by_urgency` ON `due` (`site`,`rank`,`due_on`,`tag`,`task`);