/** What the tests of the device's store try in the browser itself. */
export { openDatabase } from "../../../web/storage/database.ts";
export { keepsakesOn } from "../../../web/storage/keepsake-shelf.ts";
export { roomOn } from "../../../web/storage/room.ts";
export { shelfOn } from "../../../web/storage/shelf.ts";
