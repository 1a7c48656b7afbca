const Tanks = () => null;

export default Tanks;
