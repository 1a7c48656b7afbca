/**
 * The text of a CSV file. Spreadsheets on Windows still save in their old code page: what is no
 * UTF-8 is read as that, so that an accent does not turn into a question mark.
 */
export const csvText = async (file: Blob): Promise<string> => {
  const bytes = await file.arrayBuffer();
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
};
