export { heelLinks, tankScope, type HeelLink, type TankEvent, type TankScope } from './tank-scope';
