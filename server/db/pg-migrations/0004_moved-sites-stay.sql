-- the record of a site that moved takes nothing more here, whoever asks: a second one could not be joined to the first
CREATE FUNCTION refuse_moved() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN
  IF EXISTS (SELECT 1 FROM moved_sites WHERE site = NEW.site) THEN
    RAISE EXCEPTION 'the site has moved' USING ERRCODE = 'HF001';
  END IF;
  RETURN NEW;
END $$;
--> statement-breakpoint
CREATE FUNCTION refuse_moved_gone() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN
  IF EXISTS (SELECT 1 FROM moved_sites WHERE site = OLD.site) THEN
    RAISE EXCEPTION 'the site has moved' USING ERRCODE = 'HF001';
  END IF;
  RETURN OLD;
END $$;
--> statement-breakpoint
CREATE FUNCTION refuse_moved_answer() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN
  IF EXISTS (SELECT 1 FROM moved_sites JOIN decisions USING (site) WHERE decisions.id = NEW.question) THEN
    RAISE EXCEPTION 'the site has moved' USING ERRCODE = 'HF001';
  END IF;
  RETURN NEW;
END $$;
--> statement-breakpoint
CREATE TRIGGER sites_moved BEFORE INSERT ON sites FOR EACH ROW EXECUTE FUNCTION refuse_moved();
--> statement-breakpoint
CREATE TRIGGER site_words_moved BEFORE INSERT OR UPDATE ON site_words FOR EACH ROW EXECUTE FUNCTION refuse_moved();
--> statement-breakpoint
CREATE TRIGGER valve_records_moved BEFORE INSERT ON valve_records FOR EACH ROW EXECUTE FUNCTION refuse_moved();
--> statement-breakpoint
CREATE TRIGGER jobs_moved BEFORE INSERT ON jobs FOR EACH ROW EXECUTE FUNCTION refuse_moved();
--> statement-breakpoint
CREATE TRIGGER phrases_moved BEFORE INSERT ON phrases FOR EACH ROW EXECUTE FUNCTION refuse_moved();
--> statement-breakpoint
CREATE TRIGGER corrections_moved BEFORE INSERT ON corrections FOR EACH ROW EXECUTE FUNCTION refuse_moved();
--> statement-breakpoint
CREATE TRIGGER keepsakes_moved BEFORE INSERT ON keepsakes FOR EACH ROW EXECUTE FUNCTION refuse_moved();
--> statement-breakpoint
CREATE TRIGGER site_keeping_moved BEFORE INSERT ON site_keeping FOR EACH ROW EXECUTE FUNCTION refuse_moved();
--> statement-breakpoint
CREATE TRIGGER site_stock_moved BEFORE INSERT ON site_stock FOR EACH ROW EXECUTE FUNCTION refuse_moved();
--> statement-breakpoint
CREATE TRIGGER decisions_moved BEFORE INSERT ON decisions FOR EACH ROW EXECUTE FUNCTION refuse_moved();
--> statement-breakpoint
CREATE TRIGGER signatures_moved BEFORE INSERT ON signatures FOR EACH ROW EXECUTE FUNCTION refuse_moved();
--> statement-breakpoint
CREATE TRIGGER report_settings_moved BEFORE INSERT ON report_settings FOR EACH ROW EXECUTE FUNCTION refuse_moved();
--> statement-breakpoint
CREATE TRIGGER report_versions_moved BEFORE INSERT ON report_versions FOR EACH ROW EXECUTE FUNCTION refuse_moved();
--> statement-breakpoint
CREATE TRIGGER calendar_feeds_moved BEFORE INSERT ON calendar_feeds FOR EACH ROW EXECUTE FUNCTION refuse_moved();
--> statement-breakpoint
CREATE TRIGGER site_stock_moved_gone BEFORE DELETE ON site_stock FOR EACH ROW EXECUTE FUNCTION refuse_moved_gone();
--> statement-breakpoint
CREATE TRIGGER answers_moved BEFORE INSERT ON answers FOR EACH ROW EXECUTE FUNCTION refuse_moved_answer();
