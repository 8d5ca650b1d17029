CREATE TABLE `site_words` (
	`id` text PRIMARY KEY NOT NULL,
	`site` text NOT NULL,
	`say` text NOT NULL,
	`as_code` text NOT NULL,
	`taught_at` text NOT NULL,
	`withdrawn` integer NOT NULL
);
--> statement-breakpoint
CREATE INDEX `site_words_of_site` ON `site_words` (`site`,`withdrawn`,`say`);