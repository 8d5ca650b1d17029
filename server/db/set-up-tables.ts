import { type Kit, lite } from "./kit.lite.ts";

/** What a person sets up at a site beside its valves. */
export function setUpTables({ table, text, integer, primaryKey }: Kit) {
  /** Valve families that a site set up for itself, in place of ours or beside them. The newest of a code stands. */
  const siteFamilies = table(
    "site_families",
    {
      site: text("site").notNull(),
      family: text("family").notNull(),
      number: integer("number").notNull(),
      /** familySchema as JSON; null where it was taken back */
      known: text("known"),
      madeAt: text("made_at").notNull(),
    },
    (t) => [primaryKey({ columns: [t.site, t.family, t.number] })],
  );

  return { siteFamilies };
}

/** As libSQL has them; every query is written with these: see kit.pg.ts. */
export const { siteFamilies } = setUpTables(lite);
