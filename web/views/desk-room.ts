/** The screens of the desk, fetched together when the first of them is wanted. */
export { Desk } from "./desk/desk.tsx";
export { DueBoard } from "./due/due.tsx";
export { JobSheet } from "./job/job.tsx";
export { ValveSheet } from "./valve/valve.tsx";
