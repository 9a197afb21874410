/** Version of the elements and of the script that brings them: it names the folder that their files lie in for ever. */
export const VERSION = '1.0.0';
