import { describe, expect, it } from "vitest";
import type { ValveListRead } from "../../../core/index.ts";
import { bench } from "../app-under-test.ts";

const HEAD = "tag,family,size_in,service,interval_months";

async function site() {
  const at = await bench();
  const post = async (csv: string, apply = false): Promise<ValveListRead> =>
    at.ask("POST", "/api/sites/north/valve-list", { csv, apply });
  const refusal = async (csv: string, apply = false) => {
    const answer = await at.send("POST", "/api/sites/north/valve-list", { csv, apply });
    return { status: answer.status, detail: ((await answer.json()) as { detail: string }).detail };
  };
  const tags = async () =>
    (await at.ask("GET", "/api/valves?site=north")).valves.map((one: { tag: string }) => one.tag);
  return { ...at, post, refusal, tags };
}

describe("a list of valves out of a spreadsheet", () => {
  it("is looked at row by row without keeping anything, then kept whole", async () => {
    const { ask, post, tags } = await site();
    await ask("PUT", "/api/valves/LCV-214", { site: "north", family: "balanced_dump", size_in: 2 });
    const csv = `${HEAD}\nlcv-213,balanced_dump,2,severe,4\nLCV-214,balanced_dump,3,,\nLCV-215,,,,\n`;
    const tried = await post(csv);
    expect(tried).toMatchObject({ new: 2, changed: 1, same: 0, refused: 0, applied: false });
    expect(tried.rows[1]?.changes).toEqual(["size_in: 2 becomes 3"]);
    expect(await tags()).toEqual(["LCV-214"]);
    expect((await post(csv, true)).applied).toBe(true);
    expect(await tags()).toEqual(["LCV-213", "LCV-214", "LCV-215"]);
    const { valve } = await ask("GET", "/api/valves/LCV-213?site=north");
    expect(valve).toMatchObject({ family: "balanced_dump", size_in: 2, service: "severe", interval_months: 4 });
    // the same list again changes nothing
    expect(await post(csv)).toMatchObject({ new: 0, changed: 0, same: 3 });
  });

  it("says of each bad row what is wrong with it, and keeps nothing while one is", async () => {
    const { post, refusal, tags } = await site();
    const csv = [
      HEAD,
      "LCV-1,balanced_dump,two,normal,4",
      "LCV-2,flux_capacitor,2,normal,4",
      "LCV-3,balanced_dump,2,harsh,4",
      "LCV-4,balanced_dump,-2,normal,4",
      ",balanced_dump,2,normal,4",
      "LCV-5,balanced_dump,2,normal,4",
      "LCV-5,balanced_dump,2,normal,4",
      "LCV-6,balanced_dump,2,normal,4,more",
    ].join("\r\n");
    const read = await post(csv);
    expect(read).toMatchObject({ new: 1, refused: 7 });
    const wrong = new Map(read.rows.map((row) => [row.row, row.problems.join()]));
    expect(wrong.get(2)).toMatch(/size_in.*number/);
    expect(wrong.get(3)).toMatch(/family: flux_capacitor is not known/);
    expect(wrong.get(4)).toMatch(/service/);
    expect(wrong.get(5)).toMatch(/size_in/);
    expect(wrong.get(6)).toMatch(/tag/);
    expect(wrong.get(8)).toMatch(/stands in row 7 already/);
    expect(wrong.get(9)).toMatch(/6 cells/);
    expect((await refusal(csv, true)).detail).toMatch(/^7 rows are refused/);
    expect(await tags()).toEqual([]);
  });

  it.each([
    ["semicolons and decimal commas", "\ufefftag;size_in\r\nLCV-1;1,5\r\n", 1.5],
    ["tabs", "Tag\tSize in\nLCV-1\t2", 2],
    ["quotes, with a line end inside", 'tag,"size_in"\n"LCV-1","3"\n', 3],
  ])("is read with %s", async (_, csv, size) => {
    const { ask, post } = await site();
    expect(await post(csv, true)).toMatchObject({ new: 1, refused: 0 });
    expect((await ask("GET", "/api/valves/LCV-1?site=north")).valve.size_in).toBe(size);
  });

  it("that is no list is refused in words", async () => {
    const { refusal } = await site();
    expect((await refusal("name,size\na,2")).detail).toMatch(/columns name, size are not known/);
    expect((await refusal("size_in\n2")).detail).toMatch(/no column tag/);
    expect((await refusal('tag\n"LCV-1')).detail).toMatch(/cannot be read/);
  });
});
