-- the record of a site that moved takes nothing more here, whoever asks: a second one could not be joined to the first
CREATE TRIGGER `sites_moved` BEFORE INSERT ON `sites` WHEN EXISTS (SELECT 1 FROM `moved_sites` WHERE `site` = NEW.`site`)
BEGIN
  SELECT RAISE(ABORT, 'the site has moved');
END;
--> statement-breakpoint
CREATE TRIGGER `site_words_moved` BEFORE INSERT ON `site_words` WHEN EXISTS (SELECT 1 FROM `moved_sites` WHERE `site` = NEW.`site`)
BEGIN
  SELECT RAISE(ABORT, 'the site has moved');
END;
--> statement-breakpoint
CREATE TRIGGER `valve_records_moved` BEFORE INSERT ON `valve_records` WHEN EXISTS (SELECT 1 FROM `moved_sites` WHERE `site` = NEW.`site`)
BEGIN
  SELECT RAISE(ABORT, 'the site has moved');
END;
--> statement-breakpoint
CREATE TRIGGER `jobs_moved` BEFORE INSERT ON `jobs` WHEN EXISTS (SELECT 1 FROM `moved_sites` WHERE `site` = NEW.`site`)
BEGIN
  SELECT RAISE(ABORT, 'the site has moved');
END;
--> statement-breakpoint
CREATE TRIGGER `phrases_moved` BEFORE INSERT ON `phrases` WHEN EXISTS (SELECT 1 FROM `moved_sites` WHERE `site` = NEW.`site`)
BEGIN
  SELECT RAISE(ABORT, 'the site has moved');
END;
--> statement-breakpoint
CREATE TRIGGER `corrections_moved` BEFORE INSERT ON `corrections` WHEN EXISTS (SELECT 1 FROM `moved_sites` WHERE `site` = NEW.`site`)
BEGIN
  SELECT RAISE(ABORT, 'the site has moved');
END;
--> statement-breakpoint
CREATE TRIGGER `keepsakes_moved` BEFORE INSERT ON `keepsakes` WHEN EXISTS (SELECT 1 FROM `moved_sites` WHERE `site` = NEW.`site`)
BEGIN
  SELECT RAISE(ABORT, 'the site has moved');
END;
--> statement-breakpoint
CREATE TRIGGER `site_keeping_moved` BEFORE INSERT ON `site_keeping` WHEN EXISTS (SELECT 1 FROM `moved_sites` WHERE `site` = NEW.`site`)
BEGIN
  SELECT RAISE(ABORT, 'the site has moved');
END;
--> statement-breakpoint
CREATE TRIGGER `site_stock_moved` BEFORE INSERT ON `site_stock` WHEN EXISTS (SELECT 1 FROM `moved_sites` WHERE `site` = NEW.`site`)
BEGIN
  SELECT RAISE(ABORT, 'the site has moved');
END;
--> statement-breakpoint
CREATE TRIGGER `decisions_moved` BEFORE INSERT ON `decisions` WHEN EXISTS (SELECT 1 FROM `moved_sites` WHERE `site` = NEW.`site`)
BEGIN
  SELECT RAISE(ABORT, 'the site has moved');
END;
--> statement-breakpoint
CREATE TRIGGER `signatures_moved` BEFORE INSERT ON `signatures` WHEN EXISTS (SELECT 1 FROM `moved_sites` WHERE `site` = NEW.`site`)
BEGIN
  SELECT RAISE(ABORT, 'the site has moved');
END;
--> statement-breakpoint
CREATE TRIGGER `report_settings_moved` BEFORE INSERT ON `report_settings` WHEN EXISTS (SELECT 1 FROM `moved_sites` WHERE `site` = NEW.`site`)
BEGIN
  SELECT RAISE(ABORT, 'the site has moved');
END;
--> statement-breakpoint
CREATE TRIGGER `report_versions_moved` BEFORE INSERT ON `report_versions` WHEN EXISTS (SELECT 1 FROM `moved_sites` WHERE `site` = NEW.`site`)
BEGIN
  SELECT RAISE(ABORT, 'the site has moved');
END;
--> statement-breakpoint
CREATE TRIGGER `calendar_feeds_moved` BEFORE INSERT ON `calendar_feeds` WHEN EXISTS (SELECT 1 FROM `moved_sites` WHERE `site` = NEW.`site`)
BEGIN
  SELECT RAISE(ABORT, 'the site has moved');
END;
--> statement-breakpoint
CREATE TRIGGER `answers_moved` BEFORE INSERT ON `answers` WHEN EXISTS (SELECT 1 FROM `moved_sites` JOIN `decisions` USING (`site`) WHERE `decisions`.`id` = NEW.`question`)
BEGIN
  SELECT RAISE(ABORT, 'the site has moved');
END;
--> statement-breakpoint
CREATE TRIGGER `site_words_moved_withdrawn` BEFORE UPDATE ON `site_words` WHEN EXISTS (SELECT 1 FROM `moved_sites` WHERE `site` = NEW.`site`)
BEGIN
  SELECT RAISE(ABORT, 'the site has moved');
END;
--> statement-breakpoint
CREATE TRIGGER `site_stock_moved_gone` BEFORE DELETE ON `site_stock` WHEN EXISTS (SELECT 1 FROM `moved_sites` WHERE `site` = OLD.`site`)
BEGIN
  SELECT RAISE(ABORT, 'the site has moved');
END;
