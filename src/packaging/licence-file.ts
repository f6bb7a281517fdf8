/** Names of the two files of licences in each package, as stores and readers look for them. */
export const ownFile = 'LICENSE.txt';
export const thirdPartyFile = 'THIRD-PARTY-LICENSES.txt';
