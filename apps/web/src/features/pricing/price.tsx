const Price = () => null;

export default Price;
