/** Version of the package, as results carry it. A test holds it against package.json. */
export const version = '0.1.0'
