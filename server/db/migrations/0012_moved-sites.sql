CREATE TABLE `moved_sites` (
	`site` text PRIMARY KEY NOT NULL,
	`moved_to` text NOT NULL,
	`moved_at` text NOT NULL
);
