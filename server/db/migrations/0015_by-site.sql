CREATE INDEX `jobs_by_time` ON `jobs` (`started_at`,`id`);--> statement-breakpoint
CREATE INDEX `answers_of_question` ON `answers` (`question`);