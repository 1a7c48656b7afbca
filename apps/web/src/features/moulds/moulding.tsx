const Moulding = () => null;

export default Moulding;
