CREATE INDEX "answers_of_question" ON "answers" USING btree ("question");--> statement-breakpoint
CREATE INDEX "jobs_by_time" ON "jobs" USING btree ("started_at","id");