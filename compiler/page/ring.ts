// The sound of a clock that has run out: three short tones and, where the device can, three buzzes. Browsers may keep
// a page silent; the clock's own box shows it as well.

export function ring(): void {
  try {
    navigator.vibrate?.([300, 150, 300, 150, 300]);
    const audio = new AudioContext();
    for (const start of [0, 0.45, 0.9]) {
      const tone = audio.createOscillator();
      const volume = audio.createGain();
      tone.frequency.value = 880;
      volume.gain.value = 0.25;
      tone.connect(volume).connect(audio.destination);
      tone.start(audio.currentTime + start);
      tone.stop(audio.currentTime + start + 0.3);
    }
  } catch {
    // Silence is allowed.
  }
}
