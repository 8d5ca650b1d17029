CREATE TABLE `owed` (
	`site` text NOT NULL,
	`tag` text NOT NULL,
	`n` integer NOT NULL,
	`urgency` text NOT NULL,
	`last_on` text NOT NULL,
	PRIMARY KEY(`site`, `tag`, `n`)
);
--> statement-breakpoint
CREATE INDEX `owed_by_urgency` ON `owed` (`urgency`,`last_on`,`site`,`tag`,`n`);--> statement-breakpoint
CREATE INDEX `owed_of_site_by_urgency` ON `owed` (`site`,`urgency`,`last_on`,`tag`,`n`);
--> statement-breakpoint
-- what the states have open by now, as server/reading/owed.ts puts it in order
INSERT INTO `owed` (`site`, `tag`, `n`, `urgency`, `last_on`)
SELECT `site`, `tag`, one.key,
  CASE
    WHEN json_extract(one.value, '$.do') = 'stop' THEN '0'
    WHEN json_extract(one.value, '$.when') = 'now' THEN '1'
    WHEN json_extract(one.value, '$.when') = 'next_inspection' THEN '3'
    ELSE '2 ' || json_extract(one.value, '$.when')
  END,
  `last_on`
FROM `valve_states`, json_each(CASE WHEN json_valid(`open`) THEN `open` ELSE '[]' END) AS one;
