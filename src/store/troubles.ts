import type { Problem } from '../journal/problems.ts';

/** Problems of the machine, in words for a keeper. They are shown until handled. */

/** A problem with the records of this name as they lie on this device. */
function problemWith(name: string, said: Omit<Problem, 'where'>): Problem {
  return { where: `The records "${name}" on this device`, ...said };
}

export function newerDatabase(name: string): Problem {
  return problemWith(name, {
    code: 'storage-newer',
    found: 'records written by a newer Damline',
    because: 'This page is older than the records and would damage them, so it leaves them shut.',
    remedy: 'Reload the page while online to get the newer Damline; nothing is lost.',
  });
}

export function otherTabBlocks(name: string): Problem {
  return problemWith(name, {
    code: 'storage-failed',
    found: 'an older Damline open in another tab',
    because: 'The records cannot be opened while an older page holds them.',
    remedy: 'Close the other Damline tabs; this page then goes on by itself.',
  });
}

export function otherTabIsNewer(name: string): Problem {
  return problemWith(name, {
    code: 'storage-newer',
    found: 'a newer Damline open in another tab',
    because: 'A newer page has taken over the records; this one can no longer save.',
    remedy: 'Reload this page.',
  });
}

export function storageLost(name: string): Problem {
  return problemWith(name, {
    code: 'storage-failed',
    found: 'the browser closed the storage',
    because: 'The connection to the storage of this device was lost.',
    remedy: 'Record the last step again; if this comes back, reload the page.',
  });
}

export function closedRecords(name: string): Problem {
  return problemWith(name, {
    code: 'storage-failed',
    found: 'records that are not open',
    because: 'Nothing can be saved because the records could not be opened.',
    remedy: 'Do what the first notice says, then reload the page.',
  });
}

/** A failure of the storage, by what the browser says of it. */
export function storageProblem(error: unknown, name: string): Problem {
  const found = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
  if (error instanceof Error && error.name === 'QuotaExceededError') {
    return problemWith(name, {
      code: 'storage-full',
      found,
      because: 'The storage of this device is full, so the last step was not saved.',
      remedy:
        'Free some space (photographs take most), or export the records and then record the step again.',
    });
  }
  return problemWith(name, {
    code: 'storage-failed',
    found,
    because: 'The storage of this device refused, so the last step was not saved.',
    remedy: 'Try again; if it fails again, export the records before closing the page.',
  });
}
