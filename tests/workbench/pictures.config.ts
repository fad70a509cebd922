// Takes the pictures of the editor for the README: `npm run pictures -w tests`.
import { defineConfig } from 'vitest/config';
import workbench from './vitest.config.js';

export default defineConfig({ ...workbench, test: { ...workbench.test, include: ['pictures.ts'] } });
