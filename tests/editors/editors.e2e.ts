// The server in two general editors, set up with the very lines that the manual prints: start, findings, completion,
// rename, format. Needs both: apt-get install neovim emacs-nox elpa-eglot
import { execFileSync } from 'node:child_process';
import { chmodSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { serverBundle } from '../server/session.js';
import { HEAD, PATH, shop } from '../server/shop.js';

const MANUAL = readFileSync(new URL('../../server/README.md', import.meta.url), 'utf8');
const WORK = `${HEAD}    remove wheel-nut, wheel\n    remove   caliper-bolt\n`;

let folder = '';
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'baywright-editors-'));
  for (const [path, text] of Object.entries(shop(WORK))) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  // The command as it stands on a shop's path; only its word for the server is asked for here.
  writeFileSync(
    join(folder, 'baywright'),
    `#!/bin/sh\nshift\nexec "${process.execPath}" "${await serverBundle()}" "$@"\n`,
  );
  chmodSync(join(folder, 'baywright'), 0o755);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

interface Seen {
  readonly findings: readonly string[];
  readonly offers: readonly string[];
  readonly renamed: string;
  readonly formatted: string;
}

function expectWorks(seen: Seen): void {
  expect(seen.findings).toContain('S301');
  expect(seen.offers[0]).toBe('caliper-bolt');
  expect(seen.renamed).toContain('remove road-nut, wheel');
  expect(seen.formatted).toContain('    remove caliper-bolt\n');
}

/** The first code block of a language in the manual. */
function printed(language: string): string {
  return new RegExp(`\`\`\`${language}\n([\\s\\S]*?)\`\`\``).exec(MANUAL)?.[1] ?? '';
}

function run(program: string, args: readonly string[]): Seen {
  const env = {
    ...process.env,
    PATH: `${folder}:${process.env.PATH}`,
    HOME: folder,
    XDG_CONFIG_HOME: folder,
    XDG_DATA_HOME: folder,
    XDG_STATE_HOME: folder,
    XDG_CACHE_HOME: folder,
  };
  execFileSync(program, [...args], { cwd: folder, env, timeout: 60_000, stdio: ['ignore', 'pipe', 'pipe'] });
  return JSON.parse(readFileSync(join(folder, 'seen.json'), 'utf8')) as Seen;
}

const LINE = WORK.split('\n').length - 1;

test('Neovim', () => {
  writeFileSync(join(folder, 'init.lua'), printed('lua'));
  writeFileSync(
    join(folder, 'drive.lua'),
    `
    local wait = function(test) assert(vim.wait(20000, test, 50), 'nothing came') end
    vim.cmd('edit ${PATH}')
    wait(function() return #vim.diagnostic.get(0) > 0 end)
    local findings = vim.tbl_map(function(d) return d.code or (d.user_data and d.user_data.lsp and d.user_data.lsp.code) end, vim.diagnostic.get(0))
    vim.api.nvim_buf_set_lines(0, ${LINE - 1}, ${LINE}, false, { '    remove ' })
    -- Outside insert mode the cursor cannot stand behind the last character of a line.
    local at = { textDocument = vim.lsp.util.make_text_document_params(), position = { line = ${LINE - 1}, character = 11 } }
    local answers = vim.lsp.buf_request_sync(0, 'textDocument/completion', at, 10000)
    local offers = {}
    for _, answer in pairs(answers) do for _, item in ipairs(answer.result.items or answer.result) do table.insert(offers, item.label) end end
    vim.api.nvim_buf_set_lines(0, ${LINE - 1}, ${LINE}, false, { '    remove   caliper-bolt' })
    vim.api.nvim_win_set_cursor(0, { ${LINE - 1}, 14 })
    local text = function() return table.concat(vim.api.nvim_buf_get_lines(0, 0, -1, false), '\\n') .. '\\n' end
    vim.lsp.buf.rename('road-nut')
    wait(function() return text():find('remove road%-nut') end)
    local renamed = text()
    if vim.lsp.buf.format then vim.lsp.buf.format({ timeout_ms = 10000 }) else vim.lsp.buf.formatting_sync(nil, 10000) end
    local file = io.open('seen.json', 'w')
    file:write(vim.json.encode({ findings = findings, offers = offers, renamed = renamed, formatted = text() }))
    file:close()
    vim.cmd('qall!')
  `,
  );
  expectWorks(run('nvim', ['--headless', '-u', 'init.lua', '-c', 'luafile drive.lua']));
});

test('Emacs', () => {
  writeFileSync(join(folder, 'init.el'), printed('elisp'));
  writeFileSync(
    join(folder, 'drive.el'),
    `
    (setq eglot-confirm-server-initiated-edits nil eglot-events-buffer-size 0)
    (fset 'y-or-n-p (lambda (&rest _) t)) ; nobody is there to ask
    (find-file "${PATH}")
    (apply #'eglot (eglot--guess-contact))
    (defun until (test) (let ((left 400)) (while (and (> left 0) (not (funcall test))) (accept-process-output nil 0.05) (setq left (1- left))) (unless (> left 0) (error "nothing came"))))
    (flymake-start)
    (until (lambda () (flymake-diagnostics)))
    (let* ((findings (mapcar (lambda (d) (if (string-match "[A-Z][0-9][0-9][0-9]" (flymake-diagnostic-text d)) (match-string 0 (flymake-diagnostic-text d)) "")) (flymake-diagnostics)))
           (offers (progn
             (goto-char (point-max)) (forward-line -1) (delete-region (point) (line-end-position)) (insert "    remove ")
             (eglot--signal-textDocument/didChange) ; what Emacs does when it is idle, which a batch never is
             (let ((answer (jsonrpc-request (eglot--current-server-or-lose) :textDocument/completion (append (eglot--TextDocumentPositionParams) nil))))
               (mapcar (lambda (item) (plist-get item :label)) (plist-get answer :items)))))
           (renamed (progn
             (insert "  caliper-bolt") (eglot--signal-textDocument/didChange) (forward-line -1) (search-forward "wheel-n") (eglot-rename "road-nut") (buffer-string)))
           (formatted (progn (eglot-format-buffer) (buffer-string))))
      (with-temp-file "${join('..', 'seen.json')}" (insert (json-encode (list :findings (vconcat findings) :offers (vconcat offers) :renamed renamed :formatted formatted)))))
    (kill-emacs 0)
  `,
  );
  expectWorks(
    run('emacs', [
      '--batch',
      '--eval',
      '(setq package-user-dir "/nonexistent")',
      '-f',
      'package-initialize',
      '-l',
      'init.el',
      '-l',
      'drive.el',
    ]),
  );
});
