const Kitchen = () => null;

export default Kitchen;
