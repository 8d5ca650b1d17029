/** What the speech engine's package would bring a stand-in for: every browser that runs this has the thing itself. */
export const { Blob } = globalThis;
