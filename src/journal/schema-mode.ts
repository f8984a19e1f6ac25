import * as z from 'zod';

/** Schemas are read as they stand, without making code at run time: the page's security policy forbids that. */
z.core.globalConfig.jitless = true;
