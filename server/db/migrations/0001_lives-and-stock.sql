CREATE TABLE `site_stock` (
	`site` text NOT NULL,
	`part` text NOT NULL,
	`count` integer NOT NULL,
	PRIMARY KEY(`site`, `part`)
);
--> statement-breakpoint
ALTER TABLE `valve_states` ADD `family` text DEFAULT '' NOT NULL;--> statement-breakpoint
ALTER TABLE `valve_states` ADD `lives` text DEFAULT '[]' NOT NULL;--> statement-breakpoint
CREATE INDEX `valve_states_like` ON `valve_states` (`site`,`family`,`service`,`last_on`);