const Recalls = () => null;

export default Recalls;
