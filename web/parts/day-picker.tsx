/** One day, and the way to the day before and after. */
export function DayPicker({ day, go }: { day: string; go: (day: string) => void }) {
  return (
    <div class="day-picker">
      <button type="button" class="tab" aria-label="The day before" onClick={() => go(dayFrom(day, -1))}>
        ◂
      </button>
      <label>
        <span>Day</span>
        <input
          type="date"
          value={day}
          onBlur={(event: Event) => {
            const picked = (event.target as HTMLInputElement).value;
            if (picked && picked !== day) go(picked);
          }}
        />
      </label>
      <button type="button" class="tab" aria-label="The day after" onClick={() => go(dayFrom(day, 1))}>
        ▸
      </button>
    </div>
  );
}

function dayFrom(day: string, days: number): string {
  return new Date(Date.parse(`${day}T12:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);
}
