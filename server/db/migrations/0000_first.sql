CREATE TABLE `corrections` (
	`id` text PRIMARY KEY NOT NULL,
	`site` text NOT NULL,
	`job` text NOT NULL,
	`phrase` text NOT NULL,
	`text` text,
	`why` text,
	`person` text,
	`made_at` text NOT NULL,
	`made_offset` integer NOT NULL,
	`received_at` text NOT NULL,
	FOREIGN KEY (`job`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`phrase`) REFERENCES `phrases`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE INDEX `corrections_in_order` ON `corrections` (`site`,`job`,`made_at`,`id`);--> statement-breakpoint
CREATE TABLE `due` (
	`site` text NOT NULL,
	`tag` text NOT NULL,
	`task` text NOT NULL,
	`due_on` text NOT NULL,
	`body` text NOT NULL,
	PRIMARY KEY(`site`, `tag`, `task`)
);
--> statement-breakpoint
CREATE INDEX `due_by_date` ON `due` (`site`,`due_on`,`tag`);--> statement-breakpoint
CREATE TABLE `entries` (
	`site` text NOT NULL,
	`job` text NOT NULL,
	`n` integer NOT NULL,
	`tag` text NOT NULL,
	`started_at` text NOT NULL,
	`phrase` text,
	`type` text NOT NULL,
	`body` text NOT NULL,
	`reader` text NOT NULL,
	PRIMARY KEY(`site`, `job`, `n`)
);
--> statement-breakpoint
CREATE INDEX `entries_by_valve` ON `entries` (`site`,`tag`,`started_at`,`job`,`n`);--> statement-breakpoint
CREATE TABLE `jobs` (
	`id` text PRIMARY KEY NOT NULL,
	`site` text NOT NULL,
	`tag` text,
	`started_at` text NOT NULL,
	`started_offset` integer NOT NULL,
	`received_at` text NOT NULL,
	`revision` integer NOT NULL,
	`stale` integer NOT NULL
);
--> statement-breakpoint
CREATE INDEX `jobs_stale` ON `jobs` (`site`,`stale`);--> statement-breakpoint
CREATE INDEX `jobs_by_day` ON `jobs` (`site`,`started_at`,`id`);--> statement-breakpoint
CREATE TABLE `phrases` (
	`id` text PRIMARY KEY NOT NULL,
	`site` text NOT NULL,
	`job` text NOT NULL,
	`device` text,
	`person` text,
	`text` text NOT NULL,
	`said_at` text NOT NULL,
	`said_offset` integer NOT NULL,
	`how` text NOT NULL,
	`confidence` real,
	`reader` text NOT NULL,
	`received_at` text NOT NULL,
	FOREIGN KEY (`job`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE INDEX `phrases_in_order` ON `phrases` (`site`,`job`,`said_at`,`id`);--> statement-breakpoint
CREATE TABLE `readings` (
	`phrase` text PRIMARY KEY NOT NULL,
	`site` text NOT NULL,
	`job` text NOT NULL,
	`reader` text NOT NULL,
	`entries` text NOT NULL,
	`unread` text NOT NULL,
	`ask` text NOT NULL,
	`marks` text NOT NULL,
	`alerts` text NOT NULL,
	`touched` text NOT NULL,
	FOREIGN KEY (`phrase`) REFERENCES `phrases`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE INDEX `readings_of_job` ON `readings` (`site`,`job`);--> statement-breakpoint
CREATE TABLE `sites` (
	`site` text PRIMARY KEY NOT NULL,
	`name` text NOT NULL,
	`zone` text NOT NULL,
	`created_at` text NOT NULL
);
--> statement-breakpoint
CREATE TABLE `valve_records` (
	`site` text NOT NULL,
	`tag` text NOT NULL,
	`number` integer NOT NULL,
	`known` text NOT NULL,
	`made_at` text NOT NULL,
	PRIMARY KEY(`site`, `tag`, `number`)
);
--> statement-breakpoint
CREATE TABLE `valve_states` (
	`site` text NOT NULL,
	`tag` text NOT NULL,
	`reader` text NOT NULL,
	`open` text NOT NULL,
	`service` text NOT NULL,
	`last_on` text NOT NULL,
	PRIMARY KEY(`site`, `tag`)
);
--> statement-breakpoint
CREATE TABLE `valve_tags` (
	`site` text NOT NULL,
	`tag` text NOT NULL,
	`stale` integer NOT NULL,
	PRIMARY KEY(`site`, `tag`)
);
--> statement-breakpoint
CREATE INDEX `valve_tags_stale` ON `valve_tags` (`site`,`stale`,`tag`);--> statement-breakpoint
CREATE INDEX `valve_tags_by_tag` ON `valve_tags` (`tag`);