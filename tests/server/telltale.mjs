import dns from "node:dns";
import { Socket } from "node:net";

/** Loaded before the server: writes down, and does not hinder, every other host that it looks up or connects to. */
const tell = (what) => process.stderr.write(`TELLTALE ${what}\n`);

const connect = Socket.prototype.connect;
Socket.prototype.connect = function told(...given) {
  const [about] = Array.isArray(given[0]) ? given[0] : given;
  if (typeof about === "object" && about !== null) tell(`connects to ${about.host ?? about.path}:${about.port ?? ""}`);
  else tell(`connects to ${given.slice(0, 2).join(" ")}`);
  return connect.apply(this, given);
};
for (const name of ["lookup", "resolve", "resolve4", "resolve6"]) {
  const ask = dns[name];
  dns[name] = (host, ...rest) => {
    // its own address to listen on is asked for as well
    if (!/^(127\.0\.0\.1|localhost)$/.test(host)) tell(`looks up ${host}`);
    return ask(host, ...rest);
  };
}
tell("is in");
