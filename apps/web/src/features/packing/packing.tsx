const Packing = () => null;

export default Packing;
