import type { OneTimeCode } from "../../../core/index.ts";
import { QrCode } from "../../parts/qr-code.tsx";
import { momentWords } from "./people-words.ts";

/** A one-time code as a phone's camera reads it, and as a link. It is not shown again. */
export function CodeCard({ code, name, shut }: { code: OneTimeCode; name: string; shut: () => void }) {
  const link = `${location.origin}${code.path}`;
  const alone = /^(localhost|127\.|\[::1\])/.test(location.host);
  return (
    <div class="tell code-card" role="status">
      <p>
        {code.for === "device" ? (
          <>
            Point the camera of <b>{name}’s</b> phone at this, and open the link.
          </>
        ) : (
          <>
            For <b>{name}</b>, to choose a password. Whoever opens it first chooses it: hand it over, do not post it.
          </>
        )}
      </p>
      <QrCode text={link} label={`QR code of the link for ${name}`} />
      <p>
        <a href={link} class="code-link">
          {link}
        </a>
      </p>
      {alone && (
        <p class="bad">This page is open under an address of this machine alone: no phone will find it there.</p>
      )}
      <p>Good once, until {momentWords(code.expiresAt)}. It is not shown again.</p>
      <button type="button" class="tab" onClick={shut}>
        Put it away
      </button>
    </div>
  );
}
