CREATE TABLE `calendar_feeds` (
	`site` text PRIMARY KEY NOT NULL,
	`secret_hash` text NOT NULL,
	`made_at` text NOT NULL
);
--> statement-breakpoint
CREATE INDEX `calendar_feeds_by_secret` ON `calendar_feeds` (`secret_hash`);