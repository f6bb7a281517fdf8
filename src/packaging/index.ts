export { ownFile, thirdPartyFile } from './licence-file';
export { noteBundled, packagesIn, thirdPartyTexts } from './licences';
export { packagedFilesOf } from './packaged-files';
export { stripAddresses } from './strip-addresses';
