const Prices = () => null;

export default Prices;
