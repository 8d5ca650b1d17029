CREATE TABLE `report_recipients` (
	`site` text NOT NULL,
	`day` text NOT NULL,
	`version` integer NOT NULL,
	`address` text NOT NULL,
	`state` text NOT NULL,
	`reply` text,
	`at` text,
	PRIMARY KEY(`site`, `day`, `version`, `address`)
);
--> statement-breakpoint
CREATE TABLE `report_settings` (
	`site` text PRIMARY KEY NOT NULL,
	`recipients` text NOT NULL,
	`hour` text NOT NULL,
	`weekends` integer NOT NULL,
	`quiet` integer NOT NULL,
	`since` text NOT NULL,
	`last_day` text NOT NULL
);
--> statement-breakpoint
CREATE TABLE `report_versions` (
	`site` text NOT NULL,
	`day` text NOT NULL,
	`version` integer NOT NULL,
	`message_id` text NOT NULL,
	`record` text NOT NULL,
	`sender` text NOT NULL,
	`message` blob NOT NULL,
	`made_at` text NOT NULL,
	`state` text NOT NULL,
	`claim` text DEFAULT '' NOT NULL,
	`attempts` integer NOT NULL,
	`asked_at` text NOT NULL,
	`next_try_at` text NOT NULL,
	`settled_at` text,
	`problem` text,
	PRIMARY KEY(`site`, `day`, `version`)
);
--> statement-breakpoint
CREATE INDEX `report_versions_waiting` ON `report_versions` (`state`,`next_try_at`);