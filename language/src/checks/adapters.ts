// F214: torques set through a crowfoot where the setting cannot be worked out.
import { finding } from '../diagnostics/define.js';
import { adapterSettingUnknown } from '../diagnostics/f214-adapter-setting-unknown.js';
import type { Check } from './check.js';
import { dialSettings } from './dial-setting.js';
import { statementsWith } from './own-lines.js';

export const adapters: Check = ({ job }) =>
  statementsWith(job, 'with').flatMap(({ statement }) => {
    const open = dialSettings(job, statement).find((setting) => !('torque' in setting));
    if (!open || 'torque' in open) return [];
    const named = statement.named('with').find(({ thing }) => thing === open.adapter);
    if (!named) return [];
    return [
      finding(
        adapterSettingUnknown,
        { file: job.file.path, span: named.item },
        { adapter: open.adapter.name, wrench: open.wrench?.name },
      ),
    ];
  });
