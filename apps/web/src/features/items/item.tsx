const Item = () => null;

export default Item;
