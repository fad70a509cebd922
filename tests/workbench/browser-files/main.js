// A folder that is not on disk: the test library, fetched once and kept in memory, under the scheme `library`.
const vscode = require('vscode');

exports.activate = async (context) => {
  const home = vscode.Uri.joinPath(context.extensionUri, '..', 'library.json').toString(true);
  /** Text by path, as bytes. */
  const files = new Map(
    Object.entries(await (await fetch(home)).json()).map(([path, text]) => [
      path,
      new TextEncoder().encode(text),
    ]),
  );
  const changed = new vscode.EventEmitter();
  const isFolder = (path) => path === '/' || [...files.keys()].some((file) => file.startsWith(`${path}/`));
  const missing = (uri) => vscode.FileSystemError.FileNotFound(uri);
  context.subscriptions.push(
    vscode.workspace.registerFileSystemProvider('library', {
      onDidChangeFile: changed.event,
      watch: () => ({ dispose: () => {} }),
      stat: (uri) => {
        const bytes = files.get(uri.path);
        if (bytes) return { type: vscode.FileType.File, ctime: 0, mtime: 0, size: bytes.length };
        if (isFolder(uri.path)) return { type: vscode.FileType.Directory, ctime: 0, mtime: 0, size: 0 };
        throw missing(uri);
      },
      readDirectory: (uri) => {
        const start = uri.path === '/' ? '/' : `${uri.path}/`;
        const names = [...files.keys()]
          .filter((path) => path.startsWith(start))
          .map((path) => path.slice(start.length).split('/'));
        const kinds = new Map(
          names.map(([name, ...rest]) => [
            name,
            rest.length > 0 ? vscode.FileType.Directory : vscode.FileType.File,
          ]),
        );
        return [...kinds];
      },
      readFile: (uri) => {
        const bytes = files.get(uri.path);
        if (!bytes) throw missing(uri);
        return bytes;
      },
      writeFile: (uri, content) => {
        const type = files.has(uri.path) ? vscode.FileChangeType.Changed : vscode.FileChangeType.Created;
        files.set(uri.path, content);
        changed.fire([{ type, uri }]);
      },
      createDirectory: () => {},
      delete: (uri) => void files.delete(uri.path),
      rename: (from, to) => {
        files.set(to.path, files.get(from.path));
        files.delete(from.path);
      },
    }),
  );
};
