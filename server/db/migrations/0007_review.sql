CREATE TABLE `answers` (
	`id` text PRIMARY KEY NOT NULL,
	`question` text NOT NULL,
	`phrase` text NOT NULL,
	`text` text NOT NULL,
	`how` text NOT NULL,
	`person` text,
	`by` text NOT NULL,
	`made_at` text NOT NULL,
	FOREIGN KEY (`question`) REFERENCES `decisions`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE INDEX `answers_of_phrase` ON `answers` (`phrase`,`made_at`,`id`);--> statement-breakpoint
CREATE TABLE `decisions` (
	`id` text PRIMARY KEY NOT NULL,
	`site` text NOT NULL,
	`job` text NOT NULL,
	`phrase` text NOT NULL,
	`n` integer NOT NULL,
	`what` text NOT NULL,
	`meaning` text NOT NULL,
	`words` text,
	`correction` text,
	`person` text,
	`by` text NOT NULL,
	`made_at` text NOT NULL,
	FOREIGN KEY (`job`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`phrase`) REFERENCES `phrases`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE INDEX `decisions_of_phrase` ON `decisions` (`phrase`,`n`);--> statement-breakpoint
CREATE INDEX `decisions_of_job` ON `decisions` (`job`);--> statement-breakpoint
CREATE TABLE `review_items` (
	`phrase` text PRIMARY KEY NOT NULL,
	`site` text NOT NULL,
	`job` text NOT NULL,
	`started_at` text NOT NULL,
	`said_at` text NOT NULL,
	`tag` text NOT NULL,
	`weight` integer NOT NULL,
	`reasons` text NOT NULL,
	`text` text NOT NULL,
	`entries` text NOT NULL,
	`meaning` text NOT NULL,
	`state` text NOT NULL,
	FOREIGN KEY (`phrase`) REFERENCES `phrases`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`job`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE INDEX `review_items_of_all` ON `review_items` (`state`,`weight`,`started_at`,`job`,`said_at`,`phrase`);--> statement-breakpoint
CREATE INDEX `review_items_of_site` ON `review_items` (`site`,`state`,`weight`,`started_at`,`job`,`said_at`,`phrase`);--> statement-breakpoint
CREATE INDEX `review_items_of_job` ON `review_items` (`job`,`state`,`weight`);--> statement-breakpoint
CREATE TABLE `signatures` (
	`id` text NOT NULL,
	`site` text NOT NULL,
	`job` text NOT NULL,
	`n` integer NOT NULL,
	`act` text NOT NULL,
	`phrases` integer NOT NULL,
	`why` text,
	`person` text,
	`by` text NOT NULL,
	`made_at` text NOT NULL,
	PRIMARY KEY(`job`, `n`),
	FOREIGN KEY (`job`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE INDEX `signatures_by_id` ON `signatures` (`id`);--> statement-breakpoint
ALTER TABLE `jobs` ADD `unweighed` integer DEFAULT 1 NOT NULL;--> statement-breakpoint
ALTER TABLE `jobs` ADD `signed` integer DEFAULT 0 NOT NULL;--> statement-breakpoint
CREATE INDEX `jobs_unweighed` ON `jobs` (`unweighed`,`site`);--> statement-breakpoint
CREATE INDEX `jobs_unsigned` ON `jobs` (`site`,`signed`,`started_at`,`id`);--> statement-breakpoint
CREATE INDEX `jobs_unsigned_of_all` ON `jobs` (`signed`,`started_at`,`id`);