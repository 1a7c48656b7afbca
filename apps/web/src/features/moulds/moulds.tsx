const Moulds = () => null;

export default Moulds;
