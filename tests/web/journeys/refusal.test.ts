import { afterAll, beforeAll, expect, it } from "vitest";
import { type Device, inBrowser, newDevice, say } from "../chromium.ts";
import { type RunningServer, runServer } from "../running-server.ts";

inBrowser("a phrase that the server refuses", () => {
  let server: RunningServer;
  let device: Device;

  beforeAll(async () => {
    server = await runServer();
    device = await newDevice();
  });
  afterAll(async () => {
    await device?.close();
    await server?.remove();
  });

  it("is shown with the server's words, stays on the device, and holds up nothing behind it", async () => {
    const { page } = device;
    await page.goto(server.address);
    await page.fill("#words", "LCV-213");
    await page.press("#words", "Enter");
    await page.locator(".invite").waitFor();
    // half a surrogate pair cannot be kept letter for letter, and the service says so
    await page.evaluate(() => {
      const field = document.querySelector<HTMLInputElement>("#words");
      if (field) field.value = "seat worn \ud83d";
      field?.form?.requestSubmit();
    });
    await page.getByText("The server refused this phrase.").waitFor();
    await page.getByText("surrogate").waitFor();
    await page.reload();
    await page.getByText("The server refused this phrase.").waitFor();
    await say(page, "flipped it");
    await page.locator(".kept-kept").waitFor();
    await expect.poll(() => page.locator(".outbox").textContent()).toBe("1 refused by the server");
    await page.locator(".menu summary").click();
    await page.getByRole("button", { name: /Send the 1 refused again/ }).waitFor();
  });
});
