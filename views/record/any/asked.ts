import { createContext } from 'preact';

/** True once the keeper has tried to save: from then on missing fields are pointed out. */
export const Asked = createContext(false);
