/** The screens of the desk, fetched together when the first of them is wanted. */
export { Carry } from "./carry/carry.tsx";
export { Desk } from "./desk/desk.tsx";
export { DueBoard } from "./due/due.tsx";
export { JobSheet } from "./job/job.tsx";
export { ReliabilitySheet } from "./reliability/reliability.tsx";
export { ReportSheet } from "./report/report.tsx";
export { ReviewDesk } from "./review/review.tsx";
export { ValveSheet } from "./valve/valve.tsx";
