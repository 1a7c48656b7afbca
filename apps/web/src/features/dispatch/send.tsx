const Send = () => null;

export default Send;
