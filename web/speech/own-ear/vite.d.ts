/** How the build is asked for the address of a script that runs outside the page. */
declare module "*?worker&url" {
  const address: string;
  export default address;
}
