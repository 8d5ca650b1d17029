/** Where a PostgreSQL database is: read without its driver, which only those who use it load. */

export const isPostgres = (url: string) => /^postgres(ql)?:\/\//.test(url);

/** One URL a server: `postgres://user@one:5432,two:5432/log` names two, of which one is a standby. */
export function urlsOf(url: string): string[] {
  const [, scheme = "", user = "", hosts = "", rest = ""] = /^(\w+:\/\/)((?:[^/?#]*@)?)([^/?#]*)(.*)$/s.exec(url) ?? [];
  return hosts.split(",").map((host) => `${scheme}${user}${host}${rest}`);
}

/** As a person may see it: without user and password. */
export function nameOf(url: string): string {
  const [, hosts = "", path = ""] = /^\w+:\/\/(?:[^/?#]*@)?([^/?#]*)([^?#]*)/s.exec(url) ?? [];
  return `postgres://${hosts}${path}`;
}
