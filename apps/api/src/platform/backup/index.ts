export { BackupError } from './archive-format';
export type { BackupSummary } from './archive-format';
export { verifyArchive } from './verify-archive';
export { restoreBackup } from './restore-backup';
export { writeBackup } from './write-backup';
