CREATE TABLE `keepsakes` (
	`id` text PRIMARY KEY NOT NULL,
	`site` text NOT NULL,
	`kind` text NOT NULL,
	`job` text NOT NULL,
	`phrase` text,
	`sha256` text NOT NULL,
	`type` text NOT NULL,
	`bytes` integer NOT NULL,
	`seconds` real,
	`width` integer,
	`height` integer,
	`taken_at` text NOT NULL,
	`taken_offset` integer NOT NULL,
	`device` text,
	`person` text,
	`received_at` text NOT NULL,
	`removed_at` text,
	FOREIGN KEY (`job`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`phrase`) REFERENCES `phrases`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE INDEX `keepsakes_of_job` ON `keepsakes` (`site`,`job`,`taken_at`,`id`);--> statement-breakpoint
CREATE INDEX `keepsakes_by_age` ON `keepsakes` (`site`,`kind`,`removed_at`,`taken_at`);--> statement-breakpoint
CREATE INDEX `keepsakes_by_content` ON `keepsakes` (`sha256`);--> statement-breakpoint
CREATE TABLE `site_keeping` (
	`site` text PRIMARY KEY NOT NULL,
	`clips` text NOT NULL,
	`days` integer NOT NULL
);
