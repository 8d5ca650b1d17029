import { beforeEach, inject } from "vitest";
import { NO_POSTGRES } from "./postgres.ts";

// each test by its name, and why
beforeEach(({ skip }) => {
  if (!inject("postgres")) skip(NO_POSTGRES);
});
