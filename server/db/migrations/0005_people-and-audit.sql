CREATE TABLE `audit` (
	`n` integer PRIMARY KEY NOT NULL,
	`at` text NOT NULL,
	`person` text,
	`by` text NOT NULL,
	`act` text NOT NULL,
	`about` text NOT NULL,
	`hash` text NOT NULL
);
--> statement-breakpoint
CREATE TABLE `devices` (
	`id` text PRIMARY KEY NOT NULL,
	`person` text NOT NULL,
	`name` text NOT NULL,
	`token_hash` text NOT NULL,
	`enrolled_at` text NOT NULL,
	`until` text,
	`revoked_at` text,
	FOREIGN KEY (`person`) REFERENCES `people`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE UNIQUE INDEX `devices_by_token` ON `devices` (`token_hash`);--> statement-breakpoint
CREATE INDEX `devices_of_person` ON `devices` (`person`);--> statement-breakpoint
CREATE TABLE `one_time_codes` (
	`code_hash` text PRIMARY KEY NOT NULL,
	`person` text NOT NULL,
	`for` text NOT NULL,
	`until` text,
	`expires_at` text NOT NULL,
	`used_at` text,
	FOREIGN KEY (`person`) REFERENCES `people`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE TABLE `people` (
	`id` text PRIMARY KEY NOT NULL,
	`name` text NOT NULL,
	`name_key` text NOT NULL,
	`roles` text NOT NULL,
	`enrolled_at` text NOT NULL,
	`left_at` text,
	`password` text
);
--> statement-breakpoint
CREATE UNIQUE INDEX `people_by_name` ON `people` (`name_key`) WHERE left_at is null;--> statement-breakpoint
CREATE TABLE `sessions` (
	`id` text PRIMARY KEY NOT NULL,
	`person` text NOT NULL,
	`token_hash` text NOT NULL,
	`began_at` text NOT NULL,
	`used_at` text NOT NULL,
	`ended_at` text,
	FOREIGN KEY (`person`) REFERENCES `people`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE UNIQUE INDEX `sessions_by_token` ON `sessions` (`token_hash`);--> statement-breakpoint
CREATE INDEX `sessions_of_person` ON `sessions` (`person`);--> statement-breakpoint
CREATE TABLE `sign_in_tries` (
	`key` text PRIMARY KEY NOT NULL,
	`failures` integer NOT NULL,
	`since` text NOT NULL,
	`locked_until` text
);
