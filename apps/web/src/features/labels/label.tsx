const Label = () => null;

export default Label;
