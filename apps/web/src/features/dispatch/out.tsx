const Out = () => null;

export default Out;
