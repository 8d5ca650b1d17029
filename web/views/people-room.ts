/** The screens about who is who and what is where, fetched together when the first of them is wanted. */
export { EnrolDevice } from "./people/enrol-device.tsx";
export { Me } from "./people/me.tsx";
export { People } from "./people/people.tsx";
export { SetPassword } from "./people/set-password.tsx";
export { SignIn } from "./people/sign-in.tsx";
export { SetUp } from "./set-up/set-up.tsx";
